import type { Voiding } from '@larderbook/contracts';
import type { PersonNames } from '../shop/person-names';

type AmendingRow = { amendReason: string | null; voided: boolean | null; recordedBy: string; recordedAt: Date };

export const voidingOf = ({ amendReason, voided, ...row }: AmendingRow, names: PersonNames): Voiding => ({
  how: voided ? 'voided' : 'corrected',
  reason: amendReason ?? '',
  by: names.get(row.recordedBy) ?? '',
  at: row.recordedAt.toISOString(),
});
