import type { Lot } from '@larderbook/contracts';
import type { Entry } from '../../../outbox/entry';

/** What was recorded of the lot; a void names the record alone. */
export function isOfLot(lot: Lot, { path, body }: Pick<Entry, 'path' | 'body'>): boolean {
  return body?.lotId === lot.lotId || (path.startsWith('/voids/') && rowsOf(lot).includes(String(body?.amends)));
}

const rowsOf = ({ inputs, weighings, controlPoints, removals, packings }: Lot): (string | undefined)[] => [
  ...inputs.map(({ inputId }) => inputId),
  ...weighings.map(({ weighingId }) => weighingId),
  ...controlPoints.flatMap(({ readings, stageEnd }) => [...readings.map(({ readingId }) => readingId), stageEnd?.rowId]),
  ...removals.map(({ rowId }) => rowId),
  ...packings.map(({ rowId }) => rowId),
];
