import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { CriticalLimit } from '../limits/limit';
import type { Source } from '../limits/source';
import type { PrintedTemperature } from '../quantity/temperature';
import type { Condition } from './condition';

/** Whose rules a set holds. `own` is what an establishment brought with its own support. */
export type Jurisdiction =
  | 'US, inspected establishment'
  | 'US, retail and catering'
  | 'Canada'
  | 'United Kingdom and Ireland'
  | 'European Union'
  | 'Australia and New Zealand'
  | 'own';

/** What a row weighs in law. An archived text is withdrawn and still used as a benchmark. */
export const forces = ['law', 'standard', 'guide', 'industry', 'archived'] as const;
export type Force = (typeof forces)[number];

/** How the figure came here. Only what was read in the source itself is confirmed and may be a default. */
export const waysKnown = ['read in the source', 'second hand', 'from memory'] as const;
export type Known = (typeof waysKnown)[number];

/** What the row is about, so that a screen can put like beside like. */
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

/** One published figure. The limit carries it as printed, with its comparison, source and longest tolerated gap. */
export type LimitRow = {
  /** Never changes, and is the same in every set that has a row on the same matter. */
  id: string;
  title: string;
  purpose: Purpose;
  limit: CriticalLimit | FigureLimit;
  /** Where in the work: section, table, page, annex. */
  paragraph: string;
  force: Force;
  known: Known;
  /** ISO 8601, as exactly as it is known: a year, a month or a day. `until` is the last moment it counts. */
  validFrom: string;
  validUntil?: string;
  /** What has to hold for the row to be used; empty when it is for anything. */
  conditions: readonly Condition[];
  /** Offered first when a plan is written; never an unconfirmed figure. */
  isDefault?: boolean;
  /** Pairs of °F and °C that the source prints off the true conversion. They stay as printed. */
  printedOdd?: readonly PrintedTemperature[];
  /** Only some rows of the printed table were read: a temperature that is absent says nothing. */
  isPartial?: boolean;
  /** Times that the source prints rising with temperature or falling with fat, and other things to know. */
  note?: string;
};

/**
 * The figures of one jurisdiction in one edition. Sets are only ever added, so an old plan keeps what it was built on.
 */
export type LimitSet = {
  id: string;
  jurisdiction: Jurisdiction;
  title: string;
  edition: string;
  validFrom: string;
  /** The set this one takes the place of. */
  replaces?: string;
  /** Only some figures of the edition were read: a row that is absent says nothing. */
  isPartial?: boolean;
  rows: readonly LimitRow[];
};

export const sourceOf = ({ limit }: LimitRow): Source => limit.source;
