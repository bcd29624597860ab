import type { ExplainedSeries } from '@larderbook/contracts';
import { useClock } from '../../../ui/voice';

/** A moment of the day on which every reading was taken: their times need no date then. */
export function useOneDay(series: ExplainedSeries | undefined, zone: string): number | undefined {
  const clock = useClock(zone);
  const instants = (series?.drawing.probes ?? []).flatMap(({ points }) => points.map(({ at }) => at));
  const [first, last] = [Math.min(...instants), Math.max(...instants)];
  return Number.isFinite(first) && clock.day(first) === clock.day(last) ? first : undefined;
}
