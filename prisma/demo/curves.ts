import { inSteps, type Chance } from './chance';

/** A temperature as somebody reads it: minutes since the stage began, °F. */
export type Curve = [minute: number, fahrenheit: number][];

/** What the temperature is at a minute. */
export type Course = (minute: number) => number;

/** Straight between the points; before and after them as at the ends. `slower` stretches it. */
export function along(points: Curve, slower = 1): Course {
  return (minute) => {
    const at = minute / slower;
    const after = points.findIndex(([known]) => known > at);
    const [to, before] = [points[after], points[after - 1]];
    if (!to) return points.at(-1)?.[1] ?? 0;
    return before ? before[1] + ((to[1] - before[1]) * (at - before[0])) / (to[0] - before[0]) : to[1];
  };
}

/** °F at the start and of the air around; per minute, once the core follows; where the chiller was mended, from there on. */
export type Chill = { from: number; around: number; perMinute: number; until: number; mended?: { at: number; perMinute: number } };

/** How long a core waits before it follows its surface. The fall is never faster than its share per minute. */
const lag = 1.5;

/** A core falling towards the air around it. */
export function cooling({ from, around, perMinute, mended }: Chill): Course {
  const left = (minute: number) => 1 - (1 - Math.exp(-perMinute * minute)) ** lag;
  const fallen: Course = (minute) => around + (from - around) * left(minute);
  if (!mended) return fallen;
  let turn = 0;
  while (fallen(turn) > mended.at) turn += 1;
  return (minute) => (minute < turn ? fallen(minute) : around + (fallen(turn) - around) * Math.exp(-mended.perMinute * (minute - turn)));
}

/** Minutes until somebody reads again, at least and at most, by what was shown. */
export type Pace = (fahrenheit: number) => [least: number, most: number];

/** The readings of a course: when somebody came by, as the display showed it. */
export function asRead(course: Course, chance: Chance, pace: Pace, last: (shown: number, minute: number) => boolean): Curve {
  const curve: Curve = [];
  for (let minute = 0; ; ) {
    const shown = inSteps(course(minute) + chance.between(-0.2, 0.2, 0.1), 0.1);
    curve.push([minute, shown]);
    if (last(shown, minute)) return curve;
    minute += chance.between(...pace(shown));
  }
}

/** What a logger sends, one value every two hours; never twice quite the same. */
export const everyTwoHours = (fahrenheit: number[], chance: Chance): Curve =>
  fahrenheit.map((value, index) => [index * 120, inSteps(value + chance.between(-0.3, 0.3, 0.1), 0.1)]);
