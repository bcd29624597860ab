import type { LineFaultCode } from '@larderbook/haccp';

/** What is wrong with a line of a formula, on its page and where a formula is sent. */
export const lineFaults = {
  'ingredient-no-name': 'An ingredient has no name.',
  'ingredient-listed-twice': '{name} is listed twice.',
  'ingredient-no-percentage': '{name} has no percentage.',
  'ingredient-not-above-zero': '{name} has {percent}; it must be above 0 %.',
  'ingredient-too-much': '{name} has {percent} of the meat block; at most 1000 % can be meant.',
  'ingredient-too-fine': '{name} has {percent}; at most four decimals are kept.',
} as const satisfies Record<LineFaultCode, string>;
