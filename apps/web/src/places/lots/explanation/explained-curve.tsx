import type { ExplainedSeries } from '@larderbook/contracts';
import { Curve } from '../../../ui/curve';
import { useLines } from '../../../ui/use-lines';
import { useFigures, useSay } from '../../../ui/voice';
import { probeName } from '../say/entered';
import { summaryOf } from './summary-of';
import { toldDrawing } from './told-drawing';

/** The lot record prints the same drawing. */
export function ExplainedCurve({ name, series, zone }: { name: string; series: ExplainedSeries; zone: string }) {
  const say = useSay('judging');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const line = useLines(['workings']);
  const told = toldDrawing(series.drawing, line);
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = told;
  return (
    <Curve
      title={say('temperature-of', { point: name })}
      summary={summaryOf(told, say, figures)}
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
              lines: lethality.map((law) => ({
                label: law.label,
                points: law.points.map(({ at, log10 }) => ({ at, value: log10 })),
              })),
            }
          : undefined
      }
    />
  );
}
