export const needsWords = (needs: readonly string[]): string => needs.map((need) => need.replace(/\.$/, '')).join('; ');
