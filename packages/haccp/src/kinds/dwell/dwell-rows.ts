import { boundOf, type Bound } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import type { DwellLimit, DwellRow } from './dwell-limit';

/** `needed` in milliseconds. */
export type Row = { printed: DwellRow; bound: Bound; needed: number };

/** From the coldest to the hottest; undefined without rows, or when °F and °C order them differently. */
export function rowsOf(limit: DwellLimit): Row[] | undefined {
  const rows = limit.rows.map((printed) => ({
    printed,
    bound: boundOf(printed.at),
    needed: millisecondsOf(printed.seconds),
  }));
  rows.sort((a, b) => a.bound['°F'] - b.bound['°F']);
  const isSound = rows.every(({ bound, needed }, index) => {
    const before = rows[index - 1];
    const isHotter = before === undefined || (bound['°F'] >= before.bound['°F'] && bound['°C'] >= before.bound['°C']);
    return isHotter && Number.isFinite(bound['°F']) && needed >= 0;
  });
  return isSound && rows.length > 0 ? rows : undefined;
}
