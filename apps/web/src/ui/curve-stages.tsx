import type { CurveStage } from './curve-props';
import { stageHeight, within, type Plot } from './curve-plot';
import css from './curve.module.css';
import { useClock, useSay } from './voice';

export function Stages({ plot, stages, zone }: { plot: Plot; stages: CurveStage[]; zone: string }) {
  return (
    <g>
      {stages.map((stage, i) => (
        <g key={`${stage.label} ${stage.from}`} transform={`translate(0 ${plot.stagesTop + i * stageHeight})`}>
          <Stage plot={plot} stage={stage} zone={zone} />
        </g>
      ))}
    </g>
  );
}

/** Mean width of a letter of such a label, in pixels. */
const LETTER = 7.5;

function Stage({ plot, stage, zone }: { plot: Plot; stage: CurveStage; zone: string }) {
  const say = useSay('explaining');
  const state = useSay('shared')(stage.state);
  const clock = useClock(zone);
  const { x, right, width, newest } = plot;
  const { label, from, to, deadline } = stage;
  const [start, end] = [within(plot, x(from)), within(plot, x(to ?? Math.max(newest, from)))];
  const due = deadline === undefined || x(deadline) > right ? undefined : x(deadline);
  const isLate = due !== undefined && end > due;
  const words =
    deadline === undefined
      ? say('stage-stands', { stage: label, state })
      : say('stage-by-stands', { stage: label, time: clock.time(deadline), state });
  const isRight = start + words.length * LETTER > width;
  return (
    <>
      <text
        className={css.stageLabel}
        x={isRight ? Math.max(right, words.length * LETTER) : start}
        y={13}
        textAnchor={isRight ? 'end' : 'start'}
      >
        {words}
      </text>
      <g transform="translate(0 26)">
        {due !== undefined && <path className={css.allowed} d={`M${start} 0H${due}`} />}
        <path className={css.bracket} d={`M${start}-6V6M${start} 0H${end}${to === undefined ? '' : `M${end}-6V6`}`} />
        {isLate && <path className={css.late} d={`M${due} 0H${end}`} />}
        {due !== undefined && <path className={css.due} d={`M${due}-8V8`} />}
      </g>
    </>
  );
}
