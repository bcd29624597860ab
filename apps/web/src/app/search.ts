type Search = Record<string, unknown>;

/** Which door of the first page was taken. */
export const doorAsked = ({ door }: Search): { door?: 'shop' | 'demonstration' } =>
  door === 'shop' || door === 'demonstration' ? { door } : {};

/** The page to go on to after signing in. */
export const thenAsked = ({ then }: Search): { then?: string } => (typeof then === 'string' ? { then } : {});

/** What is looked for; digits alone come out of an address as a number. */
export const wordsAsked = ({ words }: Search): { words?: string } => (words === undefined ? {} : { words: String(words) });

/** A number of a supplier's lot, and whose. */
export const supplierLotAsked = ({ lot, supplier }: Search): { lot?: string; supplier?: string } => ({
  ...(lot !== undefined && { lot: String(lot).trim() }),
  ...(typeof supplier === 'string' && { supplier }),
});
