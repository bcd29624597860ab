import type { ClarificationWord, CurveFinding } from '@larderbook/contracts';

/** The readings of a control point that somebody is about to say something of, and what led there. */
export type ToClarify = {
  controlPointId: string;
  /** One sentence: what was found, or what was said before. */
  said: string;
  readingIds: string[];
  /** What is likely meant; the person chooses. */
  words: ClarificationWord[];
};

const ofClock = ['in the future', 'clock reset', 'an hour off', 'out of order'];

/** A doubt about a clock is settled by the time, any other by what was read; either word may be given. */
export const toClarify = (controlPointId: string, { kind, readingIds = [] }: CurveFinding, said: string): ToClarify => ({
  controlPointId,
  said,
  readingIds,
  words: ofClock.includes(kind) ? ['time is right', 'not of the core'] : ['not of the core'],
});
