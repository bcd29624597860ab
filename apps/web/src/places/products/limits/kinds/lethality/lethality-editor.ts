import { salmonellaKilled, type LethalityLimit, type LethalitySet } from '@larderbook/haccp';
import { durationText, secondsOf, type DurationText } from '../../duration-text';
import { counted, printedOf, printedText, typed, type PrintedText } from '../../typed';
import type { Editor } from '../editor';
import { LethalityFields } from './lethality-fields';

export type LethalityDraft = {
  kind: 'lethality';
  set: LethalitySet;
  log10: string;
  floor: PrintedText;
  authority: string;
  gap: DurationText;
};

export const lethalityEditor: Editor<LethalityLimit, LethalityDraft> = {
  empty: () => draftOf(salmonellaKilled),
  draftOf,
  figuresOf: ({ set, log10, authority, floor, gap }) => ({
    set,
    log10: counted(log10, 2),
    authority,
    floor: printedOf(floor),
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: LethalityFields,
};

function draftOf({ kind, set, log10, authority, floor, longestGapSeconds }: LethalityLimit): LethalityDraft {
  return { kind, set, log10: typed(log10, 2), authority, floor: printedText(floor), gap: durationText(longestGapSeconds) };
}
