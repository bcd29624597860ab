/** Beside published limits, and beside what is worked out from one. */
export const limitsCaution = {
  'caution-limits':
    'A published limit is a reference. Your plan must be validated; local codes, the inspector and a licensed process authority decide.',
} as const;
