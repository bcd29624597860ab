import { dayWords } from '../../ui/moment';
import type { Today } from './today-sections';

type Instrument = Pick<Today['overdueInstruments'][number], 'lastCheck' | 'dueAt'>;

/** Why an instrument has to be checked: never was, failed, or its time has come. */
export function sayOverdue({ lastCheck, dueAt }: Instrument, zone: string): { word: string; margin?: string } {
  if (!lastCheck) return { word: 'Never checked' };
  if (lastCheck.verdict.kind !== 'met') return { word: 'Out of tolerance', margin: lastCheck.verdict.margin };
  return { word: 'Overdue', margin: dueAt === undefined ? undefined : `since ${dayWords(dueAt, zone)}` };
}
