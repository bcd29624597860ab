import { useId, useRef } from 'react';
import css from './curve.module.css';
import { CurveDrawing } from './curve-drawing';
import { CurveTable } from './curve-table';
import type { CurvePoint } from './thin-curve';
import { useWidth } from './use-width';

/** A series of readings from one probe, in order of time. */
export type Probe = { label: string; points: CurvePoint[] };

/** A figure of the limit, ruled across the drawing: `{ value: 80, label: '≤ 80 °F by 14:20' }`. */
export type CurveLimit = { value: number; label: string };

/** A stage of the curve, marked along the time axis; epoch ms. */
export type CurveStage = { label: string; from: number; to: number };

export type CurveProps = {
  title: string;
  /** What the curve shows, in a sentence: read out instead of the drawing. */
  summary: string;
  unit: string;
  zone: string;
  probes: Probe[];
  limits?: CurveLimit[];
  stages?: CurveStage[];
  height?: number;
};

/** A temperature curve along its time axis: limits as ruled lines, probes told apart by line and mark, not colour. */
export function Curve(props: CurveProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 720);
  const id = useId();
  return (
    <figure className={css.curve} aria-labelledby={id}>
      <figcaption className={css.caption}>
        <span className={css.title} id={id}>{props.title}</span>
        <span className={css.summary}>{props.summary}</span>
      </figcaption>
      <div ref={frame} className={css.frame}>
        <CurveDrawing {...props} width={width} />
      </div>
      <CurveTable {...props} />
    </figure>
  );
}
