import type { ExplainedSeries } from '@larderbook/contracts';
import { Curve } from '../../../ui/curve';
import { useFigures, useSay } from '../../../ui/voice';
import { probeName } from '../say/entered';
import { summaryOf } from './summary-of';

/** The one drawing of a control point: the same as the lot record prints. */
export function ExplainedCurve({ name, series, zone }: { name: string; series: ExplainedSeries; zone: string }) {
  const say = useSay('judging');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = series.drawing;
  return (
    <Curve
      title={say('temperature-of', { point: name })}
      summary={summaryOf(series.drawing, say, figures)}
      unit={unit}
      zone={zone}
      probes={probes.map(({ probe, points }) => ({ label: probe ? probeName(probe, sayEntry) : say('core'), points }))}
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
              title: say('lethality-so-far'),
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
