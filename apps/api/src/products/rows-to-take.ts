import { ownLimitRow, type OwnLimitRow } from '@larderbook/contracts';
import type { LimitSet } from '@larderbook/haccp';
import { knownSet } from './show-limit-set';

/**
 * The figures of a published set or of one's own, as a new edition would carry them; none of them is offered first any
 * more. Throws `no-such-set`.
 */
export const rowsToTake = (setId: string, own: readonly LimitSet[]): { rows: OwnLimitRow[] } => ({
  rows: knownSet(setId, own).rows.map(({ id: rowId, ...row }) => ownLimitRow.parse({ ...row, rowId })),
});
