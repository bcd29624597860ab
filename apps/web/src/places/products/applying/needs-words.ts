/** What else has to hold, in one line without its last stop. */
export const needsWords = (needs: readonly string[]): string => needs.map((need) => need.replace(/\.$/, '')).join('; ');
