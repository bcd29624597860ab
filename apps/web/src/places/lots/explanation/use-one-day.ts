import type { ExplainedSeries } from '@larderbook/contracts';
import { useClock } from '../../../ui/voice';

/** When all readings are of one day, a moment of it: their times need no date then. */
export function useOneDay(series: ExplainedSeries | undefined, zone: string): number | undefined {
  const clock = useClock(zone);
  const instants = (series?.drawing.probes ?? []).flatMap(({ points }) => points.map(({ at }) => at));
  const [first, last] = [Math.min(...instants), Math.max(...instants)];
  return Number.isFinite(first) && clock.day(first) === clock.day(last) ? first : undefined;
}
