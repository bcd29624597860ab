import { fitLaw, gapAt, type LawPoint } from './fit-law';

/**
 * °C between the law and three points in a row: three times a probe's usual error where the law was fitted to them too,
 * more where it runs ahead. On a computed cylinder read every 1 to 15 min with 0.3 °C of noise, a steady medium set it
 * off at most once in ten runs; a door open for 40 min did in nearly every one.
 */
const STRAY_WITHIN = 0.9;
const STRAY_AHEAD = 2.5;
const ENOUGH = 6;

/**
 * The last three points leave the law farther and farther on one side: the medium changed. Close readings show it
 * within the fit, sparse ones ahead of it; fewer than six cannot.
 */
export const isStraying = (points: readonly LawPoint[]): boolean =>
  points.length >= ENOUGH && (leaves(points, points, STRAY_WITHIN) || leaves(points, points.slice(0, -3), STRAY_AHEAD));

function leaves(points: readonly LawPoint[], fitted: readonly LawPoint[], stray: number): boolean {
  const law = fitLaw(fitted);
  if (!law) return false;
  const off = points.slice(-3).map(({ hours, gap }) => gap - gapAt(law, hours)) as [number, number, number];
  const side = Math.sign(off[2]);
  const [first, second, third] = off.map((by) => side * by) as typeof off;
  return third >= stray && third >= second && second >= first && first >= 0;
}
