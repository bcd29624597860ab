import type { ExpectedState } from '../forecast/expected';
import type { LinePart } from '../limits/line-part';
import type { VerdictKind } from '../limits/verdict';
import type { Quantity } from '../quantity/quantity';
import type { TemperatureUnit } from '../quantity/temperature';
import type { LethalityDrawn } from './lethality-explained';

export type PointDrawn = { at: number; value: number };

/** A stage as a stretch of time: from its start to its end, or on while it runs (epoch ms). */
export type StageDrawn = {
  label: LinePart;
  startAt: number;
  endAt?: number;
  deadline?: number;
  kind: VerdictKind | 'running';
};

/** Where a curve passes a figure: the readings either side, and the estimates between them (epoch ms). */
export type CrossingDrawn = {
  label: Quantity;
  value: number;
  after: number;
  by: number;
  straight: number;
  chilled?: number;
};

/** A figure of a limit, ruled across; `band` is what the thermometer may be wrong by about it. */
export type LineDrawn = { label: LinePart; value: number; band?: [low: number, high: number] };

/** Earliest to latest expected arrival of a running stage at its bound (epoch ms); the warning of what may be late. */
export type ArrivalDrawn = {
  label: Quantity;
  value: number;
  earliest?: number;
  best?: number;
  latest?: number;
  deadline?: number;
  state: ExpectedState;
};

/**
 * One picture of how a series was judged, for screen and paper alike. Temperatures are in `unit`, for the eye only:
 * nothing is calculated with them.
 */
export type Drawing = {
  unit: TemperatureUnit;
  probes: { probe: string; points: PointDrawn[] }[];
  /** What was read of what the product lies in. */
  surroundings: PointDrawn[];
  lines: LineDrawn[];
  stages: StageDrawn[];
  crossings: CrossingDrawn[];
  lethality: LethalityDrawn[];
  arrival?: ArrivalDrawn;
};
