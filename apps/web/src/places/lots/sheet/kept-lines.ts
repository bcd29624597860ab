import type { SayOf } from '@larderbook/messages';
import type { Lot } from '@larderbook/contracts';
import type { Entry } from '../../../outbox/entry';
import { isOfLot } from '../preview/of-lot';
import type { SheetLine } from './sheet-line';

export function keptLines(entries: Entry[], lot: Lot, say: SayOf<'day-sheet'>): SheetLine[] {
  return entries
    .filter((entry) => isOfLot(lot, entry))
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
