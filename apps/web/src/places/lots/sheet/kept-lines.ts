import type { Entry } from '../../../outbox/entry';
import type { SheetLine } from './sheet-line';

/** What was recorded on a lot and is only on this device so far, as lines of its sheet. */
export function keptLines(entries: Entry[], lotId: string): SheetLine[] {
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
      kept: state === 'parked' ? { refused: `not taken: ${problem?.detail ?? problem?.title ?? 'look at it under “on this device”'}` } : {},
    }));
}
