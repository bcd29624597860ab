import { celsiusOf, type Course, type CoursePoint } from './course';

/** The medium's temperature the law is fitted with, and how it is known. */
export type KnownMedium = { celsius: number; from: 'measured' | 'worked out from the readings' | 'set point' };

const COLDEST = -5;
const WARMEST = 15;
/** With less the formula divides two small differences, °C. */
const LEAST_BEND = 1;
/** The middle reading stands in the middle to within a fiftieth of the span. */
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

/** A measured medium is taken as it is. A set point only where the readings themselves do not tell, and for heating. */
export function findMedium({ task, medium, points }: Course): KnownMedium {
  const stated = celsiusOf(medium.temperature);
  if (medium.is === 'measured') return { celsius: stated, from: 'measured' };
  const told = task.way === 'cooling' ? mediumOf(points) : undefined;
  if (told === undefined) return { celsius: stated, from: 'set point' };
  return { celsius: told, from: 'worked out from the readings' };
}

function mediumOf(points: readonly CoursePoint[]): number | undefined {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last) return undefined;
  const span = last.at - first.at;
  const middle = points.find(({ at }) => Math.abs(at - first.at - span / 2) <= span * IN_THE_MIDDLE);
  return middle && mediumFromThree(first.celsius, middle.celsius, last.celsius);
}
