import type { ClockDoubt } from '../thermal/clock-doubt';
import type { Doubt } from '../thermal/doubt';
import type { Coded, Phrase } from './verdict';

const DOUBTS: readonly Doubt[] = [
  'rises faster than the piece can',
  'falls faster than the piece can',
  'goes on from what was not of the core',
  'spike',
  'power-up',
  'hotter than a core',
];

/** They stay in the curve and count only against the lot. */
export const notedDoubts = (doubted: Partial<Record<Doubt, number>>): Coded[] =>
  DOUBTS.flatMap((doubt) => {
    const count = doubted[doubt];
    return count === undefined ? [] : [{ code: `doubt-${dashed(doubt)}`, figures: { count } }];
  });

export const notedClock = (doubts: readonly ClockDoubt[]): Phrase[] => doubts.map((doubt) => ({ code: `clock-${dashed(doubt)}` }));

const dashed = (words: string): string => words.replaceAll(' ', '-');
