import type { ClarificationWord, CurveFinding } from '@larderbook/contracts';

export type ToClarify = {
  controlPointId: string;
  /** What was found, or what was said before, in one sentence. */
  said: string;
  readingIds: string[];
  /** The likely words; the person chooses. */
  words: ClarificationWord[];
};

const ofClock = ['in the future', 'clock reset', 'an hour off', 'out of order'];

/** Only a doubt about a clock can be settled by calling the time right. */
export const toClarify = (controlPointId: string, { kind, readingIds = [] }: CurveFinding, said: string): ToClarify => ({
  controlPointId,
  said,
  readingIds,
  words: ofClock.includes(kind) ? ['time is right', 'not of the core'] : ['not of the core'],
});
