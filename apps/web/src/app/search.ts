type Search = Record<string, unknown>;

export const doorAsked = ({ door }: Search): { door?: 'shop' | 'demonstration' } =>
  door === 'shop' || door === 'demonstration' ? { door } : {};

export const thenAsked = ({ then }: Search): { then?: string } => (typeof then === 'string' ? { then } : {});

/** Digits alone come out of an address as a number. */
export const wordsAsked = ({ words }: Search): { words?: string } => (words === undefined ? {} : { words: String(words) });

export const supplierLotAsked = ({ lot, supplier }: Search): { lot?: string; supplier?: string } => ({
  ...(lot !== undefined && { lot: String(lot).trim() }),
  ...(typeof supplier === 'string' && { supplier }),
});
