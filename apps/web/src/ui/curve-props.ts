import type { CurvePoint } from './thin-curve';

export type Probe = { label: string; points: CurvePoint[] };

/** `band` is what the instrument may be wrong by about the figure. */
export type CurveLimit = { value: number; label: string; band?: [low: number, high: number] };

/** Epoch ms; drawn on to the newest reading while it has no end. */
export type CurveStage = {
  label: string;
  from: number;
  to?: number;
  deadline?: number;
  state: 'met' | 'missed' | 'undetermined' | 'running';
};

/** `after` and `by` are the readings on either side (epoch ms), the others estimates between them. */
export type CurveCrossing = {
  label: string;
  value: number;
  after: number;
  by: number;
  straight: number;
  chilled?: number;
};

/** Epoch ms. */
export type CurveArrival = {
  label: string;
  value: number;
  earliest?: number;
  best?: number;
  latest?: number;
  deadline?: number;
};

/** A figure that adds up along the same time axis, under the curve. */
export type CurvePanel = { title: string; unit: string; lines: { label: string; points: CurvePoint[] }[] };

export type CurveProps = {
  title: string;
  /** One sentence, read out instead of the drawing. */
  summary: string;
  unit: string;
  zone: string;
  probes: Probe[];
  /** Readings of what the product lies in. */
  surroundings?: CurvePoint[];
  limits?: CurveLimit[];
  stages?: CurveStage[];
  crossings?: CurveCrossing[];
  arrival?: CurveArrival;
  panel?: CurvePanel;
};
