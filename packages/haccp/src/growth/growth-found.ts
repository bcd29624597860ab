import { wordFor } from '../limits/coded';
import type { Coded, Figures } from '../limits/verdict';
import { growthClass, type Growth } from './growth';

/** In a coarse class, with the most across gaps, never without its set. */
export function growthFound({ set, byStraightLines, atMost, unseen }: Growth): Coded {
  const [estimate, most] = [growthClass(byStraightLines.withLag), growthClass(atMost.withLag)];
  const figures: Figures = {
    estimate: wordFor('grown', estimate),
    ...(estimate !== most && { most: wordFor('grown', most) }),
    set: { ...wordFor('growth-set', set.species) },
    version: set.version,
    standing: set.source.confirmed ? 'confirmed' : 'unconfirmed',
  };
  return { code: unseen.length > 0 ? 'grown-at-least' : 'grown', figures };
}
