import { sayLimit } from '../limits/say-limit';
import type { LimitRow } from './limit-set';

/** The figure of a row in every unit it is printed in, one line each. */
export function sayFigureOf({ limit }: LimitRow): string[] {
  const said = [sayLimit(limit, '°F'), sayLimit(limit, '°C')];
  return said[0] === said[1] ? said.slice(0, 1) : said;
}
