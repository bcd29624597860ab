import type { CorrectiveAction, Deviation } from '@larderbook/contracts';
import type { CorrectiveAction as Row } from '../generated/prisma/client';
import { madeBy, type PersonNames } from '../shop/person-names';
import { voidingOf } from './voiding-of';

/** Both in the order of entry. */
export function showActions({ actions }: { actions: Row[] }, names: PersonNames): Pick<Deviation, 'actions' | 'voidedActions'> {
  const amendedBy = new Map(actions.map((row) => [row.amendsId, row]));
  const written = actions
    .filter(({ voided }) => !voided)
    .map((row) => ({ shown: showAction(row, names), amending: amendedBy.get(row.id) }));
  return {
    actions: written.flatMap(({ shown, amending }) => (amending ? [] : [shown])),
    voidedActions: written.flatMap(({ shown, amending }) => (amending ? [{ ...shown, voided: voidingOf(amending, names) }] : [])),
  };
}

const showAction = (row: Row, names: PersonNames): Deviation['actions'][number] => ({
  actionId: row.id,
  action: { form: row.form, ...(row.parts as object) } as CorrectiveAction,
  made: madeBy(row, names),
});
