import type { ClarificationWord } from '@larderbook/contracts';
import type { ReadingData } from '@larderbook/documents';

type Said = { word: ClarificationWord; reason: string; made: { name: string; recordedAt: string } };

/** Oldest first; the last one counts. */
export const clarified = (said: readonly Said[] = []): Pick<ReadingData, 'clarifications' | 'isLeftOut'> =>
  said.length === 0
    ? {}
    : {
        clarifications: said.map(({ word, reason, made }) => ({
          word,
          why: reason,
          by: made.name,
          at: Date.parse(made.recordedAt),
        })),
        isLeftOut: said.at(-1)?.word === 'not of the core',
      };
