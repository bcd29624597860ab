import { LONGEST_GAP_SECONDS, type CoolingLimit, type CoolingStage } from '@larderbook/haccp';
import { durationText, noDuration, secondsOf, type DurationText } from '../../duration-text';
import { noPrinted, printedOf, printedText, type PrintedText } from '../../typed';
import type { Editor } from '../editor';
import { CoolingFields } from './cooling-fields';

export type StageDraft = { from: PrintedText; to: PrintedText; within: DurationText; counted: CoolingStage['counted'] };
export type CoolingDraft = { kind: 'cooling'; stages: StageDraft[]; startWithin: DurationText; gap: DurationText };

export const noStage: StageDraft = { from: noPrinted, to: noPrinted, within: { amount: '', unit: 'h' }, counted: 'stage' };

export const coolingEditor: Editor<CoolingLimit, CoolingDraft> = {
  empty: () => ({ kind: 'cooling', stages: [noStage], startWithin: noDuration, gap: durationText(LONGEST_GAP_SECONDS.cooling) }),
  draftOf: ({ kind, stages, startWithinSeconds, longestGapSeconds }) => ({
    kind,
    stages: stages.map(({ from, to, withinSeconds, counted }) => ({
      from: from ? printedText(from) : noPrinted,
      to: printedText(to),
      within: durationText(withinSeconds),
      counted,
    })),
    startWithin: startWithinSeconds === undefined ? noDuration : durationText(startWithinSeconds),
    gap: durationText(longestGapSeconds),
  }),
  figuresOf: ({ stages, startWithin, gap }) => ({
    stages: stages.map(({ from, to, within, counted }) => ({
      ...(counted !== 'end of cooking' && { from: printedOf(from) }),
      to: printedOf(to),
      withinSeconds: secondsOf(within),
      counted,
    })),
    startWithinSeconds: startWithin.amount === '' ? undefined : (secondsOf(startWithin) ?? NaN),
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: CoolingFields,
};
