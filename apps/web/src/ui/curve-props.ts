import type { CurvePoint } from './thin-curve';

/** A series of readings from one probe, in order of time. */
export type Probe = { label: string; points: CurvePoint[] };

/** A figure of a limit, ruled across the drawing; `band` is what the instrument may be wrong by about it. */
export type CurveLimit = { value: number; label: string; band?: [low: number, high: number] };

/** A stage as a bracket along the time axis, on to the newest reading while it has no end; epoch ms. */
export type CurveStage = {
  label: string;
  from: number;
  to?: number;
  deadline?: number;
  state: 'met' | 'missed' | 'undetermined' | 'running';
};

/** Where the curve passes a figure: the readings either side (epoch ms) and the estimates between them. */
export type CurveCrossing = {
  label: string;
  value: number;
  after: number;
  by: number;
  straight: number;
  chilled?: number;
};

/** The expected arrival of a running stage at its bound, from the earliest to the latest; epoch ms. */
export type CurveArrival = {
  label: string;
  value: number;
  earliest?: number;
  best?: number;
  latest?: number;
  deadline?: number;
};

/** A figure that adds up along the same time axis, in a panel of its own under the curve. */
export type CurvePanel = { title: string; unit: string; lines: { label: string; points: CurvePoint[] }[] };

export type CurveProps = {
  title: string;
  /** What the curve shows, in a sentence: read out instead of the drawing. */
  summary: string;
  unit: string;
  zone: string;
  probes: Probe[];
  /** What was read of what the product lies in. */
  surroundings?: CurvePoint[];
  limits?: CurveLimit[];
  stages?: CurveStage[];
  crossings?: CurveCrossing[];
  arrival?: CurveArrival;
  panel?: CurvePanel;
};
