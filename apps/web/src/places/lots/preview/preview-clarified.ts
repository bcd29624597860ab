import type { ClarificationWord, ControlPointOnLot, Lot } from '@larderbook/contracts';
import { previewAsItStands } from './preview-curve';
import { withSaid } from './with-said';
import type { VerdictOn } from './verdict-on';

export const previewClarified = (
  point: ControlPointOnLot,
  lot: Lot,
  readingIds: readonly string[],
  word: ClarificationWord,
): VerdictOn[] => {
  const made = { personId: '', name: '', at: '', recordedAt: '', station: '' };
  return previewAsItStands(withSaid(point, readingIds, { clarificationId: '', word, reason: '', made }), lot);
};
