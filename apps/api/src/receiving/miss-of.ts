/** The key under which accepting a delivery that missed its limit opens a deviation, once. */
export const missOf = (receiptId: string): string => `receipt:${receiptId}`;
