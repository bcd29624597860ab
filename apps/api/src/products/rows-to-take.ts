import { ownLimitRow, type OwnLimitRow } from '@larderbook/contracts';
import type { LimitSet } from '@larderbook/haccp';
import { knownSet } from './show-limit-set';

/** None of the rows is offered first any more. Throws `no-such-set`. */
export const rowsToTake = (setId: string, own: readonly LimitSet[]): { rows: OwnLimitRow[] } => ({
  rows: knownSet(setId, own).rows.map(({ id: rowId, ...row }) => ownLimitRow.parse({ ...row, rowId })),
});
