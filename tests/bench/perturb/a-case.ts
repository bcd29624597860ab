import type { ControlPoint } from '@larderbook/contracts';
import { leastLeft, unknownPiece, type Piece, type SeriesLimit } from '@larderbook/haccp';
import { judgeControlPoint, type PointRecords } from '../../../apps/api/src/lots/judge-control-point';
import type { Taken } from '../../../apps/api/src/lots/judge-reading';
import { coreAt, type Shape, type TrueCurve } from './body';
import type { Chance } from './seeded';

/** A kind of limit by the name it has in the report. */
export type Kind =
  | 'dwell'
  | 'cooling from stages'
  | 'cooling from end of cooking'
  | 'bandTime'
  | 'lethality'
  | 'growth'
  | 'degreeHours'
  | 'weightLoss'
  | 'freezing by air'
  | 'freezing by centre';

/** One control point as a lot has it, from readings that are true. */
export type Case = { kind: Kind; point: ControlPoint; records: PointRecords };

export const MINUTE = 60_000;
export const START = Date.parse('2026-03-02T06:00:00Z');
export const instant = (minute: number): Date => new Date(START + Math.round(minute * 60) * 1000);

export function pointFor(limit: SeriesLimit, more: Partial<ControlPoint> = {}): ControlPoint {
  return {
    controlPointId: 'point',
    stepId: 'step',
    name: 'Point',
    kind: 'critical',
    hazard: 'Growth',
    takenAs: 'curve',
    limits: [{ limitId: 'limit', limit }],
    probes: [],
    monitoring: { what: '', how: '', howOften: '', who: '' },
    correctiveAction: '',
    verification: '',
    ...more,
  };
}

export type Unit = '°F' | '°C';
export const inUnit = (celsius: number, unit: Unit): number => (unit === '°C' ? celsius : celsius * 1.8 + 32);
export const inCelsius = (value: number, unit: string | null): number => (unit === '°F' ? (value - 32) / 1.8 : value);

/** Minutes at which somebody reads, or a logger does. */
export function moments(chance: Chance, from: number, until: number, slowest = 120): number[] {
  const isLogger = chance.often(0.35);
  const step = isLogger ? chance.oneOf([1, 1, 2, 5, 10]) : chance.oneOf([5, 10, 15, 30, 45, 60, 90, 120].filter((one) => one <= slowest));
  const all: number[] = [];
  const most = isLogger ? 150 : 60;
  for (let at = from; at <= until && all.length < most; at += isLogger ? step : Math.max(1, Math.round(step * chance.between(0.6, 1.3)))) {
    all.push(at);
  }
  return all;
}

export type ReadAs = { unit: Unit; rounding: number; probe: string; off: number };

export const readAs = (chance: Chance, probe = ''): ReadAs => {
  const unit = chance.oneOf<Unit>(['°F', '°F', '°C']);
  return { unit, rounding: unit === '°C' || chance.often(0.7) ? 10 : 1, probe, off: 0 };
};

let next = 0;
/** Kept at once, or all together when a logger was read. */
export function takenAt(minute: number, value: number | null, unit: string | null, probe: string, late = 0.3): Taken {
  next += 1;
  const at = instant(minute);
  return { id: `${next}`, probe, takenAt: at, value, unit, answer: null, seen: '', arrivedAt: new Date(at.getTime() + late * MINUTE) };
}

export function readingsOf(curve: TrueCurve, minutesPerUnit: number, at: readonly number[], read: ReadAs, shift = 0): Taken[] {
  return at.map((minute) => {
    const value = inUnit(coreAt(curve, (minute + shift) / minutesPerUnit) + read.off, read.unit);
    return takenAt(minute, Math.round(value * read.rounding) / read.rounding, read.unit, read.probe);
  });
}

/** α in m²/s, of meat: 1.2e-7 to 1.5e-7. The plan states the piece a little thinner than it is, or not at all. */
export function statedPiece(chance: Chance, shape: Shape, minutesPerUnit: number): Piece | undefined {
  const half = Math.sqrt(chance.between(1.2e-7, 1.5e-7) * minutesPerUnit * 60);
  const piece: Piece = { shape, smallest: { value: Math.max(1, Math.floor(half * 2000)), unit: 'mm' } };
  const isSlowerThanUsual = leastLeft(piece, MINUTE) > leastLeft(unknownPiece, MINUTE);
  return isSlowerThanUsual && chance.often(0.3) ? undefined : piece;
}

/** What a limit of the kind would have to spare, to bring it near what was read. */
export function spareOf({ point, records }: Case, limit: SeriesLimit): number {
  const { judged } = judgeControlPoint({ ...point, errors: undefined, limits: [{ limitId: 'limit', limit }] }, records);
  return judged[0]?.verdict.spare ?? 0;
}
