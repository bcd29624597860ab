/** What published limits are of and what they ask: in English as the set itself says it. */
export const publishedLimits = {};
