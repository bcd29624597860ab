import type { Phrase } from '../limits/verdict';
import type { Lethality } from './lethality';
import { nameOfSet } from './name-of-set';

/** Real cooks add up to hundreds of logs, which says nothing any more. */
export const MOST_TOLD = 12;

/** In half logs, rounded down, capped, never without its set. */
export function lethalityFound({ atLeast, set }: Pick<Lethality, 'atLeast' | 'set'>): Phrase {
  const isBeyond = atLeast > MOST_TOLD;
  const logs = { value: String(isBeyond ? MOST_TOLD : Math.floor(atLeast * 2) / 2), unit: 'log10' } as const;
  const standing = set.source.confirmed ? 'confirmed' : 'unconfirmed';
  return { code: isBeyond ? 'killed-more-than' : 'killed-about', figures: { logs, set: nameOfSet(set), standing } };
}
