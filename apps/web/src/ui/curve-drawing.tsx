import type { CurveProps } from './curve-props';
import { Arrival } from './curve-arrival';
import { Axes } from './curve-axes';
import { Crossings } from './curve-crossings';
import { LimitLabels, LimitLines } from './curve-limits';
import { Panel } from './curve-panel';
import { plotOf } from './curve-plot';
import { ProbeLine, SurroundingsLine } from './curve-probe';
import { Stages } from './curve-stages';
import css from './curve.module.css';
import { useSay } from './voice';

export function CurveDrawing(props: CurveProps & { width: number }) {
  const say = useSay('explaining');
  const { probes, limits = [], stages = [], crossings = [], surroundings = [] } = props;
  const { arrival, panel, unit, zone, width } = props;
  if (probes.every(({ points }) => points.length === 0)) return <p className={css.none}>{say('no-reading')}</p>;
  const plot = plotOf(props, width);
  const { height } = plot;
  return (
    <svg className={css.drawing} width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden>
      <Axes plot={plot} unit={unit} zone={zone} />
      <LimitLines plot={plot} limits={limits} />
      {arrival && <Arrival plot={plot} arrival={arrival} />}
      <SurroundingsLine plot={plot} points={surroundings} />
      {probes.map((probe, i) => (
        <ProbeLine key={probe.label} plot={plot} probe={probe} number={i} />
      ))}
      <Crossings plot={plot} crossings={crossings} />
      <LimitLabels plot={plot} limits={limits} probes={probes} />
      <Stages plot={plot} stages={stages} zone={zone} />
      {panel && <Panel plot={plot} panel={panel} />}
    </svg>
  );
}
