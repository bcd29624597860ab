/** Without the last full stop. */
export const needsWords = (needs: readonly string[]): string => needs.map((need) => need.replace(/\.$/, '')).join('; ');
