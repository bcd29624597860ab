import { LONGEST_GAP_SECONDS, type BandTimeLimit } from '@larderbook/haccp';
import { durationText, secondsOf, type DurationText } from '../../duration-text';
import { noPrinted, printedOf, printedText, type PrintedText } from '../../typed';
import type { Editor } from '../editor';
import { BandTimeFields } from './band-time-fields';

export type BandTimeDraft = { kind: 'bandTime'; from: PrintedText; to: PrintedText; most: DurationText; gap: DurationText };

export const bandTimeEditor: Editor<BandTimeLimit, BandTimeDraft> = {
  empty: () => ({
    kind: 'bandTime',
    from: noPrinted,
    to: noPrinted,
    most: { amount: '', unit: 'h' },
    gap: durationText(LONGEST_GAP_SECONDS.comeUp),
  }),
  draftOf: ({ kind, from, to, maxSeconds, longestGapSeconds }) => ({
    kind,
    from: printedText(from),
    to: printedText(to),
    most: durationText(maxSeconds),
    gap: durationText(longestGapSeconds),
  }),
  figuresOf: ({ from, to, most, gap }) => ({
    from: printedOf(from),
    to: printedOf(to),
    maxSeconds: secondsOf(most),
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: BandTimeFields,
};
