import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import type { Coded } from '../limits/verdict';
import { instantWith, joinInstant, type AsKept, type CurveReading, type Instant } from './instant';

export type { CurveReading } from './instant';

/**
 * In order of time, one place per instant. Two values of one instant are both kept: a judge takes the worse. Without
 * them both arrays are the same.
 */
export type Curve = { colder: readonly CurveReading[]; warmer: readonly CurveReading[]; notes: Coded[] };

const COLDEST_POSSIBLE = onCommonScale({ hundredths: -4000, unit: '°C' });
/** On the common scale. */
export const HOTTEST_POSSIBLE = onCommonScale({ hundredths: 30000, unit: '°C' });

/** False for what no probe in food can show: open circuits, slipped decimal points. */
export function isPossible(temperature: Degrees | undefined): temperature is Degrees {
  if (!temperature || !Number.isSafeInteger(temperature.hundredths)) return false;
  if (temperature.unit !== '°C' && temperature.unit !== '°F') return false;
  const value = onCommonScale(temperature);
  return value >= COLDEST_POSSIBLE && value <= HOTTEST_POSSIBLE;
}

/** Unusable readings leave a gap, never a guess. */
export function prepareCurve(readings: readonly CurveReading[]): Curve {
  const notes: Coded[] = [];
  const setAside = countWhere(readings, isSetAside);
  notes.push(...noteOf('set-aside', setAside));
  const unusable = countWhere(readings, (reading) => !isUsableReading(reading));
  notes.push(...noteOf('cannot-be', unusable - setAside));
  let usable = unusable > 0 ? readings.filter(isUsableReading) : readings;
  if (isOutOfOrder(usable)) {
    usable = [...usable].sort((a, b) => a.at - b.at);
    notes.push(SORTED);
  }
  return joinSameInstants(usable, notes);
}

/** A reading without a probe belongs to the probe without a name. */
export function byProbe<Read extends { probe?: string }>(readings: readonly Read[]): Map<string, readonly Read[]> {
  const first = readings[0]?.probe ?? '';
  if (readings.every((reading) => (reading?.probe ?? '') === first)) return new Map([[first, readings]]);
  const probes = new Map<string, Read[]>();
  for (const reading of readings) {
    const probe = reading?.probe ?? '';
    const known = probes.get(probe);
    if (known) known.push(reading);
    else probes.set(probe, [reading]);
  }
  return probes;
}

/** Last instant of a calendar (epoch ms, ECMA-262); a later one cannot be computed with. */
const LAST_INSTANT = 8.64e15;

export const isInstant = (at: number | undefined): boolean => at !== undefined && Math.abs(at) <= LAST_INSTANT;

/** Kept with the record, but judged by nobody. */
export const isSetAside = (reading: AsKept): boolean => reading?.word === 'not of the core';

export const isUsableReading = (reading: CurveReading): boolean =>
  Boolean(reading) && !isSetAside(reading) && isInstant(reading.at) && isPossible(reading.temperature);

/** A temperature beside the core still tells where the probe was. */
export const isBesideCore = (reading: CurveReading): boolean =>
  isSetAside(reading) && isInstant(reading.at) && isPossible(reading.temperature);

function isOutOfOrder(readings: readonly CurveReading[]): boolean {
  let last = -Infinity;
  for (const { at } of readings) {
    if (at < last) return true;
    last = at;
  }
  return false;
}

function joinSameInstants(sorted: readonly CurveReading[], notes: Coded[]): Curve {
  if (!sorted.some((reading, index) => index > 0 && sorted[index - 1]?.at === reading.at)) {
    return { colder: sorted, warmer: sorted, notes };
  }
  const instants: Instant[] = [];
  let disagreeing = 0;
  for (const reading of sorted) {
    const last = instants[instants.length - 1];
    if (last?.at !== reading.at) instants.push(instantWith(reading));
    else if (!joinInstant(last, reading)) disagreeing += 1;
  }
  notes.push(...noteOf('disagreeing', disagreeing));
  return { colder: instants.map(({ colder }) => colder), warmer: instants.map(({ warmer }) => warmer), notes };
}

function countWhere(readings: readonly CurveReading[], test: (reading: CurveReading) => boolean): number {
  let count = 0;
  for (const reading of readings) if (test(reading)) count += 1;
  return count;
}

export const SORTED: Coded = { code: 'sorted' };

export const noteOf = (code: 'set-aside' | 'cannot-be' | 'disagreeing', count: number): Coded[] =>
  count > 0 ? [{ code, figures: { count } }] : [];
