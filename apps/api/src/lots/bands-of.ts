import type { ControlPoint, ControlPointOnLot, Judged } from '@larderbook/contracts';
import {
  above,
  boundOf,
  prepareCurve,
  sayFromTo,
  sayPrinted,
  stageSpans,
  type BandTimeLimit,
  type CoolingLimit,
  type CurveReading,
  type DwellLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import { curveOf } from './judge-reading';

export type Band = ControlPointOnLot['bands'][number];
type Span = Omit<Band, 'limitId' | 'kind'>;

/** The stages of a curve as stretches of time, for the margin of the day sheet: of the probe whose verdict governs. */
export function bandsOf(point: ControlPoint, records: PointRecords, judged: readonly Judged[]): Band[] {
  if (point.takenAs !== 'curve') return [];
  const curve = curveOf(records.readings);
  return judged.flatMap((one) => {
    const readings = prepareCurve(curve.filter(({ probe = '' }) => probe === (one.verdict.probe ?? probe))).colder;
    const unit = readings.at(-1)?.temperature.unit;
    return unit ? bandsOfLimit(one, readings, unit, records) : [];
  });
}

function bandsOfLimit(
  { limitId, limit, verdict }: Judged,
  readings: readonly CurveReading[],
  unit: TemperatureUnit,
  records: PointRecords,
): Band[] {
  const kind = verdict.kind === 'undetermined' && !records.endedAt ? 'running' : verdict.kind;
  const drawn = (span: Span | undefined): Band[] => (span ? [{ ...span, limitId, kind }] : []);
  switch (limit.kind) {
    case 'cooling':
      return stagesOf(limit, readings, unit, records).map((stage) => ({ ...stage, limitId }));
    case 'bandTime':
      return drawn(passageOf(limit, readings, unit));
    case 'dwell':
      return drawn(verdict.running?.since === undefined ? heldAbove(limit, readings, unit) : runningHold(verdict.running));
    default:
      return [];
  }
}

function stagesOf(limit: CoolingLimit, readings: readonly CurveReading[], unit: TemperatureUnit, records: PointRecords) {
  return stageSpans(prepareCurve(readings), limit, contextOf(records)).flatMap(({ from, to, startAt, endAt, deadline, verdict }) => {
    if (startAt === undefined) return [];
    const kind = verdict === 'undetermined' && !records.endedAt ? ('running' as const) : verdict;
    return [{ label: sayFromTo(from, to, unit), startAt, endAt, deadline, kind }];
  });
}

/** From the last reading before the band was entered to the first beyond it: the longest it can have been. */
function passageOf({ from, to, maxSeconds }: BandTimeLimit, readings: readonly CurveReading[], unit: TemperatureUnit): Span | undefined {
  const [start, end] = [boundOf(from), boundOf(to)];
  const way = end['°F'] > start['°F'] ? 1 : -1;
  const entered = readings.findIndex(({ temperature }) => above(temperature, start) * way > 0);
  const startAt = readings[Math.max(0, entered - 1)]?.at;
  if (entered === -1 || startAt === undefined) return undefined;
  const left = readings.slice(entered).find(({ temperature }) => above(temperature, end) * way >= 0);
  return { label: sayFromTo(from, to, unit), startAt, endAt: left?.at, deadline: startAt + maxSeconds * 1000 };
}

const runningHold = ({ bound, since, until }: { bound: string; since?: number; until?: number }): Span | undefined =>
  since === undefined ? undefined : { label: bound, startAt: since, deadline: until };

/** The stretch in which the core stood at or above the lowest temperature of the table. */
function heldAbove({ rows }: DwellLimit, readings: readonly CurveReading[], unit: TemperatureUnit): Span | undefined {
  const [coldest] = [...rows].sort((a, b) => boundOf(a.at)['°F'] - boundOf(b.at)['°F']);
  if (!coldest) return undefined;
  const bound = boundOf(coldest.at);
  const hot = readings.filter(({ temperature }) => above(temperature, bound) >= 0);
  const [first, last] = [hot[0], hot.at(-1)];
  return first && last && { label: `≥ ${sayPrinted(coldest.at, unit)}`, startAt: first.at, endAt: last.at };
}
