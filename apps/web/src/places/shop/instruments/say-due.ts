import { calibrationDue } from '@larderbook/haccp';
import type { State } from '../../../ui/status';
import type { Instrument } from './check-method';

export type Due = { state: State; word: string; margin?: string };

/** When an instrument is due for its check. One whose last check failed is due until a good one. `now` epoch ms. */
export function sayDue(
  { lastCheck, checkEveryDays, overdue }: Pick<Instrument, 'lastCheck' | 'checkEveryDays' | 'overdue'>,
  now: number,
): Due {
  if (!lastCheck) return { state: 'missed', word: 'Never checked' };
  if (lastCheck.verdict.kind !== 'met') return { state: 'missed', word: 'Out of tolerance', margin: 'check it again before it is used' };
  const checkedAt = Date.parse(lastCheck.made.at);
  const { isOverdue, says } = calibrationDue(checkedAt, checkEveryDays, Math.max(now, checkedAt)); // this page's clock may tick behind the check
  if (isOverdue || overdue) return { state: 'missed', word: 'Overdue', margin: says.replace(/^overdue /, '') };
  return { state: 'met', word: 'In date', margin: says };
}
