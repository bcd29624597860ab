import type { FreezingLimit, Thickness } from './freezing-limit';
import { inDoubt } from '../../limits/in-doubt';
import type { LimitFault } from '../../limits/limit-fault-code';
import type { Coded, Found, Verdict } from '../../limits/verdict';
import { scaled } from '../../quantity/decimal';
import { amountOf, printedIn, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { TemperatureUnit } from '../../quantity/temperature';
import { byProbe, prepareCurve, type CurveReading } from '../../thermal/curve';
import { FREEZING_CONDITIONS, freezingByCentre, freezingRows, type FreezingRow } from './freezing-table';
import { frozenHolds, type FrozenHold } from './frozen-hold';

/** Freezer air, with the thickness of the pieces, or the centre of the meat. */
export type Freezing = {
  read: { what: 'freezer'; thickness: Thickness } | { what: 'centre' };
  readings: readonly CurveReading[];
  /** When the meat went in (epoch ms): air read before it froze nothing, and without it none is met. */
  startAt?: number;
  ended: boolean;
};

const HOUR = 3_600_000;
/** Between readings of a freezer or a frozen centre. Common practice, no source. */
const LONGEST_GAP = 2 * HOUR;

/**
 * Every probe at or below the temperature of a row, without a break, for its time; both readings of a step must be.
 * Nothing is interpolated between rows. Compared exactly.
 */
export function judgeFreezing(freezing: Freezing, longestGap = LONGEST_GAP): Verdict {
  const { read, readings, ended } = freezing;
  const rows = rowsFor(read);
  const early = readings.filter((reading) => isBefore(reading, freezing)).length;
  const curves = [...byProbe(readings)].map(([, own]) => prepareCurve(own.filter((one) => !isBefore(one, freezing))));
  const leftOut: Coded[] = early > 0 ? [{ code: 'freezing-before', figures: { count: early } }] : [];
  const notes = [...curves.flatMap((curve) => curve.notes), ...leftOut, ...FREEZING_CONDITIONS];
  if ('finding' in rows) return { kind: 'undetermined', ...rows, notes };
  const last = curves[0]?.warmer.at(-1);
  if (!last || curves.some(({ warmer }) => warmer.length === 0)) {
    return { kind: 'undetermined', finding: 'freezing-no-reading', figures: {}, notes };
  }
  const temperatures = rows.map(({ at }) => at);
  const byCurve = curves.map(({ warmer }) => frozenHolds(warmer, temperatures, longestGap));
  const held = rows.map((row, index) => {
    const holds = byCurve.map((own) => own[index] as FrozenHold);
    const since = Math.max(...holds.map((hold) => hold.since ?? Infinity));
    return { row, longest: Math.min(...holds.map(({ longest }) => longest)), since };
  });
  const decided = decide(held, ended, last.temperature.unit);
  const verdict = { ...decided, notes };
  if (decided.kind !== 'met' || !isStartUnknown(freezing)) return verdict;
  return { ...inDoubt(verdict, 'freezing-start-unknown', decided.figures), measure: decided.measure };
}

const isStartUnknown = ({ read, startAt }: Freezing): boolean => read.what === 'freezer' && !Number.isFinite(startAt);

/** The centre is the meat's whenever it is read; freezer air is not. */
export const isBefore = (reading: CurveReading, { read, startAt }: Pick<Freezing, 'read' | 'startAt'>): boolean =>
  read.what === 'freezer' && startAt !== undefined && reading?.at < startAt;

type Held = { row: FreezingRow; longest: number; since: number };
function decide(held: readonly Held[], ended: boolean, unit: TemperatureUnit): Pick<Verdict, 'kind' | 'spare' | 'running'> & Found {
  const shortOf = ({ row, longest }: Held) => row.hours * HOUR - longest;
  const share = ({ row, longest }: Held) => longest / row.hours;
  const nearest = held.reduce((most, one) => (share(one) > share(most) ? one : most));
  const best = held.find((one) => shortOf(one) <= 0) ?? nearest;
  const { row, longest, since } = best;
  const short = shortOf(best);
  const at = printedIn(row.at, unit);
  const shared = { held: timeOf(longest), at, needed: rowTime(row) };
  if (short <= 0) return { kind: 'met', finding: 'freezing-held', measure: 'freezing', figures: shared, spare: -short };
  const figures = { ...shared, short: timeOf(short) };
  if (ended) return { kind: 'missed', finding: 'freezing-short', measure: 'freezing', figures, spare: -short };
  const until = Number.isFinite(since) ? since + row.hours * HOUR : undefined;
  const running = { code: 'freezing', figures: { at }, until };
  return { kind: 'undetermined', finding: 'freezing-going-on', measure: 'freezing', figures, spare: -short, running };
}

/** Whole days as printed. */
const rowTime = ({ hours }: FreezingRow): Quantity => (hours % 24 === 0 ? amountOf(hours / 24, 'days', 0) : timeOf(hours * HOUR));

function rowsFor(read: Freezing['read']): readonly FreezingRow[] | Found {
  if (read.what === 'centre') return freezingByCentre;
  const rows = freezingRows(read);
  if (rows) return rows;
  const { value, unit } = read.thickness;
  const thousandths = scaled(value, 3);
  if (thousandths === undefined || thousandths <= 0) return { finding: 'freezing-thickness-unusable', figures: {} };
  return { finding: 'freezing-no-row', figures: { thickness: amountOf(thousandths, unit) } };
}

export function freezingFault({ read }: Pick<FreezingLimit, 'read'>): LimitFault | undefined {
  const rows = rowsFor(read);
  if (!('finding' in rows)) return undefined;
  const { thickness } = rows.figures as { thickness?: Quantity };
  return thickness ? { code: 'thickness-unprinted', figures: { thickness } } : { code: 'thickness-unusable' };
}
