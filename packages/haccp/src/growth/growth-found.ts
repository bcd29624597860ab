import { wordFor } from '../limits/coded';
import type { Phrase } from '../limits/verdict';
import { growthClass, type Growth } from './growth';
import type { GrowthSet } from './growth-set';

/** Logs by straight lines, and at most; `isAtLeast` where growth goes on outside the readings. */
type InClasses = { set: GrowthSet; straight: number; most: number; isAtLeast: boolean };

/** In coarse classes, because the model is not good to decimals, and never without its set. */
export function growthInClasses({ set, straight, most, isAtLeast }: InClasses): Phrase {
  const [estimate, across] = [growthClass(straight), growthClass(most)];
  const figures = {
    estimate: wordFor('grown', estimate),
    ...(estimate !== across && { most: wordFor('grown', across) }),
    set: wordFor('growth-set', set.species),
    version: set.version,
    standing: set.source.confirmed ? 'confirmed' : 'unconfirmed',
  };
  return { code: isAtLeast ? 'grown-at-least' : 'grown', figures };
}

export const growthFound = ({ set, byStraightLines, atMost, unseen }: Growth): Phrase =>
  growthInClasses({ set, straight: byStraightLines.withLag, most: atMost.withLag, isAtLeast: unseen.length > 0 });
