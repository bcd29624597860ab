import { wordFor } from '../limits/coded';
import type { Coded, Figures } from '../limits/verdict';
import { growthClass, type Growth } from './growth';

/** A growth as it may be told: in a coarse class, with what it may be across the gaps, and never without its set. */
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
