import { celsiusOf, type Course, type CoursePoint } from './course';

export type KnownMedium = { celsius: number; from: 'measured' | 'worked out from the readings' | 'set point' };

/** `between` in °C, as the medium may be. */
export type FoundMedium = { known: KnownMedium; between: readonly [coldest: number, warmest: number] };

const COLDEST = -5;
const WARMEST = 15;
/** °C either way. */
const MEDIUM_ERROR = 2;
/** Usual error, °C. */
const PROBE_ERROR = 0.3;
/** Below it the formula divides two small differences, °C. */
const LEAST_BEND = 1;
/** Tolerance of the middle reading, as a share of the span. */
const IN_THE_MIDDLE = 1 / 50;

/**
 * Ta = (T1 T3 − T2²) ÷ (T1 + T3 − 2 T2) of three equally spaced temperatures of one exponential; undefined where the
 * curve hardly bends or the answer is no chiller, −5 to 15 °C.
 */
export function mediumFromThree(first: number, second: number, third: number): number | undefined {
  const bend = first + third - 2 * second;
  if (!(bend > LEAST_BEND)) return undefined;
  const celsius = (first * third - second ** 2) / bend;
  return celsius >= COLDEST && celsius <= WARMEST ? celsius : undefined;
}

/**
 * A measured medium is used, or a set point that readings do not contradict, or while cooling the medium that the
 * readings give.
 */
export function findMedium({ task, medium, points }: Course): FoundMedium | undefined {
  const told = medium.is !== 'measured' && task.way === 'cooling' ? toldBy(points) : undefined;
  if (medium.is === 'unknown') return told;
  const celsius = celsiusOf(medium.temperature);
  const [coldest, warmest] = medium.between ?? [celsius, celsius];
  const between = [Math.min(coldest, celsius - MEDIUM_ERROR), Math.max(warmest, celsius + MEDIUM_ERROR)] as const;
  const isContradicted = told && (told.between[0] > between[1] || told.between[1] < between[0]);
  return isContradicted ? told : { known: { celsius, from: medium.is }, between };
}

/** As wide as the errors of the three readings, and no narrower than for a measured medium. */
function toldBy(points: readonly CoursePoint[]): FoundMedium | undefined {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last) return undefined;
  const span = last.at - first.at;
  const middle = points.find(({ at }) => Math.abs(at - first.at - span / 2) <= span * IN_THE_MIDDLE);
  if (!middle) return undefined;
  const ifOff = (by: number) => mediumFromThree(first.celsius + by, middle.celsius - by, last.celsius + by);
  const celsius = ifOff(0);
  if (celsius === undefined) return undefined;
  const coldest = Math.min(ifOff(-PROBE_ERROR) ?? COLDEST, celsius - MEDIUM_ERROR);
  const warmest = Math.max(ifOff(PROBE_ERROR) ?? WARMEST, celsius + MEDIUM_ERROR);
  return { known: { celsius, from: 'worked out from the readings' }, between: [coldest, warmest] };
}
