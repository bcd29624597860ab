import type { SayOf } from '@larderbook/messages';
import type { Entry } from '../../../outbox/entry';
import type { SheetLine } from './sheet-line';

export function keptLines(entries: Entry[], lotId: string, say: SayOf<'day-sheet'>): SheetLine[] {
  return entries
    .filter(({ body }) => body?.lotId === lotId)
    .map(({ id, what, takenAt, state, problem }) => ({
      id,
      kind: 'kept',
      at: Date.parse(takenAt),
      what,
      notes: [],
      flags: [],
      judged: [],
      corrects: [],
      kept: state === 'parked' ? { refused: say('refused', { why: problem?.detail ?? problem?.title ?? say('look-on-device') }) } : {},
    }));
}
