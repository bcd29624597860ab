import type { FreezingLimit, Thickness } from './freezing-limit';
import type { Verdict } from '../../limits/verdict';
import { sayBoth } from '../../quantity/bound';
import { decimalText, scaled } from '../../quantity/decimal';
import { sayDuration } from '../../quantity/duration';
import { byProbe, prepareCurve, sayReadings, type CurveReading } from '../../thermal/curve';
import {
  centreSource,
  FREEZING_CONDITIONS,
  freezingByCentre,
  freezingByThickness,
  thicknessSource,
  type FreezingRow,
} from './freezing-table';
import { frozenHolds, type FrozenHold } from './frozen-hold';

/** What was read: the air of the freezer, with the thickness of what lies in it, or the centre of the meat. */
export type Freezing = {
  read: { what: 'freezer'; thickness: Thickness } | { what: 'centre' };
  readings: readonly CurveReading[];
  /** When the meat went in (epoch ms): air that was read before it froze nothing, and without it none is met. */
  startAt?: number;
  ended: boolean;
};

const HOUR = 3_600_000;
/** Two hours between two readings of a freezer or a frozen centre. Common practice, no source. */
const LONGEST_GAP = 2 * HOUR;

/**
 * Met when any printed row is: every probe at or below its temperature, without a break, for its time. Between two
 * readings both must be; nothing is read between the rows. Temperatures and times are compared exactly.
 */
export function judgeFreezing(freezing: Freezing, longestGap = LONGEST_GAP): Verdict {
  const { read, readings, ended } = freezing;
  const rows = rowsFor(read);
  const source = read.what === 'centre' ? centreSource : thicknessSource;
  const early = readings.filter((reading) => isBefore(reading, freezing)).length;
  const curves = [...byProbe(readings)].map(([, own]) => prepareCurve(own.filter((one) => !isBefore(one, freezing))));
  const leftOut = early > 0 ? [`${sayReadings(early)} left out: of the freezer before the meat was in it.`] : [];
  const notes = [...curves.flatMap((curve) => curve.notes), ...leftOut, ...FREEZING_CONDITIONS];
  if (typeof rows === 'string') {
    return { ...doubt(rows, 'Measure it, or go by the centre temperature.'), limit: 'no row', source, notes };
  }
  const shared = { limit: rows.map(sayRow).join(' or '), source, notes };
  if (curves.some(({ warmer }) => warmer.length === 0)) {
    return { ...shared, ...doubt('There is no usable reading.', 'Read the temperature.') };
  }
  const temperatures = rows.map(({ at }) => at);
  const byCurve = curves.map(({ warmer }) => frozenHolds(warmer, temperatures, longestGap));
  const held = rows.map((row, index) => {
    const holds = byCurve.map((own) => own[index] as FrozenHold);
    const since = Math.max(...holds.map((hold) => hold.since ?? Infinity));
    return { row, longest: Math.min(...holds.map(({ longest }) => longest)), since };
  });
  const said = decide(held, ended);
  return { ...shared, ...(said.kind === 'met' && isStartUnknown(freezing) ? { ...said, ...NO_START } : said) };
}

const isStartUnknown = ({ read, startAt }: Freezing): boolean => read.what === 'freezer' && !Number.isFinite(startAt);

const NO_START = {
  kind: 'undetermined',
  because: 'Nobody recorded when the meat went into the freezer: its air froze nothing before.',
  next: 'Record when it went in, in the step before; a plan that records no such moment names it.',
} as const;

/** The centre is the meat's own, whenever it was read; the air of a freezer is not. */
const isBefore = (reading: CurveReading, { read, startAt }: Freezing): boolean =>
  read.what === 'freezer' && startAt !== undefined && reading?.at < startAt;

type Held = { row: FreezingRow; longest: number; since: number };
type Said = Omit<Verdict, 'limit' | 'source' | 'notes'>;

function decide(held: readonly Held[], ended: boolean): Said {
  const short = ({ row, longest }: Held) => row.hours * HOUR - longest;
  const share = ({ row, longest }: Held) => longest / row.hours;
  const nearest = held.reduce((most, one) => (share(one) > share(most) ? one : most));
  const best = held.find((one) => short(one) <= 0) ?? nearest;
  const measured = `${sayDuration(best.longest)} at or below ${sayBoth(best.row.at)}`;
  const shared = { measured, spare: -short(best) };
  if (short(best) <= 0) return { ...shared, kind: 'met', because: `${sayRow(best.row)} is there without a break.` };
  const lacks = `${sayDuration(short(best))} short of ${sayRow(best.row)}, the nearest row.`;
  if (ended) {
    const next = 'Freeze on, or treat the pork another way: cook it, or use tested pork.';
    return { ...shared, kind: 'missed', because: lacks, next };
  }
  const until = Number.isFinite(best.since) ? best.since + best.row.hours * HOUR : undefined;
  const running = { stage: 'Freezing', bound: sayBoth(best.row.at), until };
  return { ...shared, kind: 'undetermined', because: lacks, next: 'Keep it frozen and go on reading.', running };
}

/** The rows for what was read, or why there are none. The thickness is compared in its own unit. */
function rowsFor(read: Freezing['read']): readonly FreezingRow[] | string {
  if (read.what === 'centre') return freezingByCentre;
  const { value, unit } = read.thickness;
  const thousandths = scaled(value, 3);
  if (thousandths === undefined || thousandths <= 0) return 'The thickness is no usable number.';
  const group = freezingByThickness.find(({ most }) => thousandths <= most[unit] * 100);
  return group?.rows ?? `No row is printed for ${decimalText(thousandths, 3)} ${unit}: the thickest is 27 in (69 cm).`;
}

/** "≥ 20 days at or below 5 °F (-15 °C) or …, in the freezer, 6 in thick", as far as rows are printed for it. */
export function sayFreezing({ read }: Pick<FreezingLimit, 'read'>): string {
  const rows = rowsFor(read);
  const by = read.what === 'centre' ? 'at the centre' : `in the freezer, ${read.thickness.value} ${read.thickness.unit} thick`;
  return typeof rows === 'string' ? 'no row' : `≥ ${rows.map(sayRow).join(' or ')}, ${by}`;
}

/** One sentence on why nothing could be judged; undefined when rows are printed for it. */
export function freezingFault({ read }: Pick<FreezingLimit, 'read'>): string | undefined {
  const rows = rowsFor(read);
  return typeof rows === 'string' ? rows : undefined;
}

const sayRow = ({ at, hours }: FreezingRow): string =>
  `${hours % 24 === 0 ? `${hours / 24} days` : sayDuration(hours * HOUR)} at or below ${sayBoth(at)}`;

const doubt = (because: string, next: string): Said => ({
  kind: 'undetermined',
  measured: 'nothing usable',
  because,
  next,
});
