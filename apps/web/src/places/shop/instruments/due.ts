import { calibrationDue } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import type { State } from '../../../ui/status';
import type { Instrument } from './check-method';

export type Due = { state: State; word: string; margin?: string };

const dayMs = 86_400_000;

/** An instrument whose last check failed is due until a good one. `now` is epoch ms. */
export function dueOf(
  { lastCheck, checkEveryDays, overdue }: Pick<Instrument, 'lastCheck' | 'checkEveryDays' | 'overdue'>,
  now: number,
  say: SayOf<'instruments'>,
): Due {
  if (!lastCheck) return { state: 'missed', word: say('never-checked') };
  if (lastCheck.verdict.kind !== 'met') return { state: 'missed', word: say('out-of-tolerance'), margin: say('check-before-use') };
  const checkedAt = Date.parse(lastCheck.made.at);
  const { isOverdue, dueAt = checkedAt } = calibrationDue(checkedAt, checkEveryDays, Math.max(now, checkedAt)); // this page's clock may tick behind the check
  const days = Math.floor(Math.abs(dueAt - Math.max(now, checkedAt)) / dayMs);
  if (isOverdue || overdue) return { state: 'missed', word: say('overdue'), margin: say('overdue-by', { days }) };
  return { state: 'met', word: say('in-date'), margin: say('due-in', { days }) };
}
