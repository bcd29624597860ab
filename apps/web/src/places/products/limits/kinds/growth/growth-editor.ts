import { atMostOneLogGrown, type GrowthLimit } from '@larderbook/haccp';
import { durationText, secondsOf, type DurationText } from '../../duration-text';
import { counted, typed } from '../../typed';
import type { Editor } from '../editor';
import { GrowthFields } from './growth-fields';

export type GrowthDraft = { kind: 'growth'; species: GrowthLimit['species']; log10: string; gap: DurationText };

export const growthEditor: Editor<GrowthLimit, GrowthDraft> = {
  empty: () => draftOf(atMostOneLogGrown),
  draftOf,
  figuresOf: ({ species, log10, gap }) => ({ species, log10: counted(log10, 2), longestGapSeconds: secondsOf(gap) }),
  Fields: GrowthFields,
};

function draftOf({ kind, species, log10, longestGapSeconds }: GrowthLimit): GrowthDraft {
  return { kind, species, log10: typed(log10, 2), gap: durationText(longestGapSeconds) };
}
