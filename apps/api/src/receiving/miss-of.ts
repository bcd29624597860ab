/** The key lets an accepted delivery that missed its limit open only one deviation. */
export const missOf = (receiptId: string): string => `receipt:${receiptId}`;
