import type { Tell } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import type { Today } from './today-sections';

type Instrument = Pick<Today['overdueInstruments'][number], 'lastCheck' | 'dueAt'>;

/** Never checked, failed, or its time has come. */
export function whyOverdue({ lastCheck, dueAt }: Instrument, say: SayOf<'today'>, tell: Tell): { word: string; margin?: string } {
  if (!lastCheck) return { word: say('never-checked') };
  if (lastCheck.verdict.kind !== 'met') return { word: say('out-of-tolerance'), margin: tell(lastCheck.verdict).margin };
  return { word: say('overdue'), margin: dueAt === undefined ? undefined : say('since', { day: { at: dueAt, show: 'day' } }) };
}
