/** What is restricted in meat, in a limit, a verdict and a working. */
export const substances = {
  'substance-sodium-nitrite': 'sodium nitrite',
  'substance-sodium-nitrate': 'sodium nitrate',
  'substance-sodium-erythorbate': 'sodium erythorbate',
  'substance-phosphate': 'phosphate',
} as const;
