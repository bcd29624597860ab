import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { CriticalLimit } from '../limits/limit';
import type { Source } from '../limits/source';
import type { PrintedTemperature } from '../quantity/temperature';
import type { Condition } from './condition';

/** `own` is an establishment's, with its own support. */
export type Jurisdiction =
  | 'US, inspected establishment'
  | 'US, retail and catering'
  | 'Canada'
  | 'United Kingdom and Ireland'
  | 'European Union'
  | 'Australia and New Zealand'
  | 'own';

/** An archived text is withdrawn and still used as a benchmark. */
export const forces = ['law', 'standard', 'guide', 'industry', 'archived'] as const;
export type Force = (typeof forces)[number];

/** Only what was read in the source itself is confirmed and may be a default. */
export const waysKnown = ['read in the source', 'second hand', 'from memory'] as const;
export type Known = (typeof waysKnown)[number];

export const purposes = [
  'receiving',
  'cold holding',
  'frozen holding',
  'hot holding',
  'cooking',
  'reheating',
  'come-up',
  'humidity',
  'cooling',
  'curing',
  'additive',
  'composition',
  'fermenting',
  'drying',
  'keeping',
  'instruments',
] as const;
export type Purpose = (typeof purposes)[number];

/** As printed, with comparison, source and longest tolerated gap. */
export type LimitRow = {
  /** Never changes; the same in every set with a row on the same matter. */
  id: string;
  title: string;
  purpose: Purpose;
  limit: CriticalLimit | FigureLimit;
  /** Section, table, page, annex. */
  paragraph: string;
  force: Force;
  known: Known;
  /** ISO 8601, as exactly as known: a year, a month or a day. `until` is the last moment it counts. */
  validFrom: string;
  validUntil?: string;
  /** Empty when the row is for anything. */
  conditions: readonly Condition[];
  /** Offered first; never an unconfirmed figure. */
  isDefault?: boolean;
  /** Printed off the true conversion; they stay as printed. */
  printedOdd?: readonly PrintedTemperature[];
  /** Read in part: an absent temperature says nothing. */
  isPartial?: boolean;
  /** Oddities, as times printed rising with temperature or falling with fat. */
  note?: string;
};

/** One jurisdiction, one edition. Sets are only ever added, so an old plan keeps what it was built on. */
export type LimitSet = {
  id: string;
  jurisdiction: Jurisdiction;
  title: string;
  edition: string;
  validFrom: string;
  replaces?: string;
  /** Read in part: an absent row says nothing. */
  isPartial?: boolean;
  rows: readonly LimitRow[];
};

export const sourceOf = ({ limit }: LimitRow): Source => limit.source;
