import type { ExpectedState } from '../forecast/expected';
import type { LinePart } from '../limits/line-part';
import type { VerdictKind } from '../limits/verdict';
import type { Quantity } from '../quantity/quantity';
import type { TemperatureUnit } from '../quantity/temperature';
import type { LethalityDrawn } from './lethality-explained';

export type PointDrawn = { at: number; value: number };

/** Epoch ms; without `endAt` it still runs. */
export type StageDrawn = {
  label: LinePart;
  startAt: number;
  endAt?: number;
  deadline?: number;
  kind: VerdictKind | 'running';
};

/** Readings either side of a passed figure, and the estimates between (epoch ms). */
export type CrossingDrawn = {
  label: Quantity;
  value: number;
  after: number;
  by: number;
  straight: number;
  chilled?: number;
};

/** `band` is what the thermometer may be wrong by. */
export type LineDrawn = { label: LinePart; value: number; band?: [low: number, high: number] };

/** When a running stage may arrive at its bound (epoch ms). */
export type ArrivalDrawn = {
  label: Quantity;
  value: number;
  earliest?: number;
  best?: number;
  latest?: number;
  deadline?: number;
  state: ExpectedState;
};

/** Temperatures are in `unit`, for the eye only: nothing is calculated with them. */
export type Drawing = {
  unit: TemperatureUnit;
  probes: { probe: string; points: PointDrawn[] }[];
  /** Of the medium that the product lies in. */
  surroundings: PointDrawn[];
  lines: LineDrawn[];
  stages: StageDrawn[];
  crossings: CrossingDrawn[];
  lethality: LethalityDrawn[];
  arrival?: ArrivalDrawn;
};
