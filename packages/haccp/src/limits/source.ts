import type { Support } from './support';

/**
 * Where a figure comes from. An unconfirmed figure is shown as such and is never a default. `support` is what the
 * adopter of a plan says of it, and goes with the figure wherever it is judged or printed.
 */
export type Source = { citation: string; edition: string; confirmed: boolean; url?: string; support?: Support };

export type Cited = { source: Source };

/** Where the source says "above" or "less than", the figure itself is outside. */
export type StrictSigns = { min?: '>'; max?: '<' };
