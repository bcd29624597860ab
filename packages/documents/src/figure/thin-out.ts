export type Point = { x: number; y: number };

/**
 * Keeps the first, the last and both extremes of each `step`, so that no peak is lost. Points are in the order of x.
 */
export function thinOut(points: Point[], step: number): Point[] {
  if (points.length < 3) return points;
  const kept: Point[] = [];
  let group: Point[] = [];
  for (const point of points) {
    if (group[0] && point.x - group[0].x >= step) {
      kept.push(...extremes(group));
      group = [];
    }
    group.push(point);
  }
  return [...kept, ...extremes(group)];
}

function extremes(group: Point[]): Point[] {
  if (group.length < 4) return group;
  let lowest = 0;
  let highest = 0;
  for (const [index, { y }] of group.entries()) {
    if (y < (group[lowest]?.y ?? y)) lowest = index;
    if (y > (group[highest]?.y ?? y)) highest = index;
  }
  const indexes = new Set([0, lowest, highest, group.length - 1]);
  return [...indexes].sort((one, other) => one - other).flatMap((index) => group[index] ?? []);
}
