import { LONGEST_GAP_SECONDS, type DwellLimit } from '@larderbook/haccp';
import { durationText, noDuration, secondsOf, type DurationText } from '../../duration-text';
import { noPrinted, printedOf, printedText, type PrintedText } from '../../typed';
import type { Editor } from '../editor';
import { DwellFields } from './dwell-fields';

export type DwellDraft = { kind: 'dwell'; rows: { at: PrintedText; time: DurationText }[]; gap: DurationText };

export const dwellEditor: Editor<DwellLimit, DwellDraft> = {
  empty: () => ({ kind: 'dwell', rows: [{ at: noPrinted, time: noDuration }], gap: durationText(LONGEST_GAP_SECONDS.hold) }),
  draftOf: ({ kind, rows, longestGapSeconds }) => ({
    kind,
    rows: rows.map(({ at, seconds }) => ({ at: printedText(at), time: durationText(seconds) })),
    gap: durationText(longestGapSeconds),
  }),
  figuresOf: ({ rows, gap }) => ({
    rows: rows.map(({ at, time }) => ({ at: printedOf(at), seconds: secondsOf(time) })),
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: DwellFields,
};
