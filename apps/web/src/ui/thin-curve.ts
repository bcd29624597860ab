/** `at` is epoch ms, `value` in the unit read. */
export type CurvePoint = { at: number; value: number };

/**
 * Of each of `columns` equal spans the first, lowest, highest and last reading stay, so that no peak and no dip is
 * drawn away. Points in order of time.
 */
export function thinCurve(points: CurvePoint[], columns: number): CurvePoint[] {
  const [first, last] = [points.at(0), points.at(-1)];
  if (!first || !last || points.length <= columns * 4) return points;
  const span = (last.at - first.at) / columns || 1;
  const kept: CurvePoint[] = [];
  let inSpan: CurvePoint[] = [];
  let column = 0;
  for (const point of points) {
    const own = Math.min(columns - 1, Math.floor((point.at - first.at) / span));
    if (own !== column) {
      kept.push(...telling(inSpan));
      inSpan = [];
      column = own;
    }
    inSpan.push(point);
  }
  return [...kept, ...telling(inSpan)];
}

function telling(points: CurvePoint[]): CurvePoint[] {
  const [first] = points;
  if (!first) return [];
  let [low, high] = [first, first];
  for (const point of points) {
    if (point.value < low.value) low = point;
    if (point.value > high.value) high = point;
  }
  return [...new Set([first, low, high, points.at(-1) ?? first])].sort((a, b) => a.at - b.at);
}
