import type { PrintedTemperature } from '../quantity/temperature';
import type { LimitRow } from './limit-set';

/** Every temperature a row prints, in its order. */
export function temperaturesIn({ limit }: Pick<LimitRow, 'limit'>): PrintedTemperature[] {
  switch (limit.kind) {
    case 'range':
      return [limit.min, limit.max].filter((figure) => typeof figure === 'object');
    case 'dwell':
      return limit.rows.map(({ at }) => at);
    case 'cooling':
      return limit.stages.flatMap(({ from, to }) => (from ? [from, to] : [to]));
    case 'bandTime':
      return [limit.from, limit.to];
    default:
      return [];
  }
}
