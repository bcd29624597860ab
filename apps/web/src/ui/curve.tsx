import { useId, useRef } from 'react';
import css from './curve.module.css';
import { CurveDrawing } from './curve-drawing';
import { CurveLegend } from './curve-legend';
import type { CurveProps } from './curve-props';
import { CurveTable } from './curve-table';
import { useWidth } from './use-width';

/** Probes are told apart by line and mark, not colour. */
export function Curve(props: CurveProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 720);
  const id = useId();
  return (
    <figure className={css.curve} aria-labelledby={id}>
      <figcaption className={css.caption}>
        <span className={css.title} id={id}>
          {props.title}
        </span>
        <span className={css.summary}>{props.summary}</span>
      </figcaption>
      <div ref={frame} className={css.frame}>
        <CurveDrawing {...props} width={width} />
      </div>
      <CurveLegend {...props} />
      <CurveTable {...props} />
    </figure>
  );
}
