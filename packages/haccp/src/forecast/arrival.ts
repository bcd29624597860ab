import { fitLaw, hoursToGap, type LawPoint } from './fit-law';

/** Hours from the first point; Infinity where the medium is not beyond the target. */
export type Arrival = { best: number; earliest: number; latest: number };

/** °C */
const PROBE_ERROR = [-0.3, 0, 0.3];
/**
 * Share of the time still to go. Fitted to 15 to 60 min of a computed cylinder, whose lag was not quite over, the law
 * was 4 to 7 % late.
 */
const LAW_ERROR = 0.1;

/**
 * The range is that of fits with the medium and the last reading off either way, and a tenth of the time left.
 * Undefined where the readings follow no law; no latest where a shifted fit follows none. @param target the gap at the
 * target @param mediumErrors °C that every gap may be off
 */
export function arrivalAt(points: readonly LawPoint[], target: number, mediumErrors: readonly number[]): Arrival | undefined {
  const law = fitLaw(points);
  if (!law) return undefined;
  const all = [...mediumErrors, 0].flatMap((medium) =>
    PROBE_ERROR.map((probe) => {
      const shifted = fitLaw(points.map((point, i) => shift(point, medium + (i === points.length - 1 ? probe : 0))));
      return shifted ? hoursToGap(shifted, target + medium) : Infinity;
    }),
  );
  const now = (points[points.length - 1] as LawPoint).hours;
  const after = (hours: number, share: number) => now + (hours - now) * share;
  const [earliest, latest] = [after(Math.min(...all), 1 - LAW_ERROR), after(Math.max(...all), 1 + LAW_ERROR)];
  return { best: hoursToGap(law, target), earliest, latest };
}

const shift = ({ hours, gap }: LawPoint, by: number): LawPoint => ({ hours, gap: gap + by });
