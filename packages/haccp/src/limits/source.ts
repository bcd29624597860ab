import type { Support } from './support';

/**
 * An unconfirmed figure is shown as such and is never a default. `support` is the adopter's word and goes wherever the
 * figure does.
 */
export type Source = { citation: string; edition: string; confirmed: boolean; url?: string; support?: Support };

export type Cited = { source: Source };

/** "Above" or "less than" in the source: the figure itself is outside. */
export type StrictSigns = { min?: '>'; max?: '<' };
