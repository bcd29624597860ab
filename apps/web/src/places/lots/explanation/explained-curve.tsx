import type { ExplainedSeries } from '@larderbook/contracts';
import { Curve } from '../../../ui/curve';
import { sayProbe } from '../say/say-entered';
import { summaryOf } from './summary-of';

/** The one drawing of a control point: the same as the lot record prints. */
export function ExplainedCurve({ name, series, zone }: { name: string; series: ExplainedSeries; zone: string }) {
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = series.drawing;
  return (
    <Curve
      title={`${name}: temperature`}
      summary={summaryOf(series.drawing)}
      unit={unit}
      zone={zone}
      probes={probes.map(({ probe, points }) => ({ label: probe ? sayProbe(probe) : 'core', points }))}
      surroundings={surroundings}
      limits={lines}
      stages={stages.map(({ label, startAt, endAt, deadline, kind }) => ({
        label,
        from: startAt,
        to: endAt,
        deadline,
        state: kind,
      }))}
      crossings={crossings}
      arrival={arrival}
      panel={
        lethality.length > 0
          ? {
              title: 'Lethality so far, log₁₀, model estimate (drawn up to 12)',
              unit: 'log₁₀',
              lines: lethality.map((line) => ({
                label: line.said,
                points: line.points.map(({ at, log10 }) => ({ at, value: log10 })),
              })),
            }
          : undefined
      }
    />
  );
}
