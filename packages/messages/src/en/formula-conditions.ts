/** What a limit asks of the formula, beside the limit and in a verdict. */
export const formulaConditions = {
  'asks-nitrite-on-meat-block': 'at least {least} ingoing sodium nitrite on the meat block',
  'asks-nitrite-on-batch': 'at least {least} ingoing sodium nitrite on the batch',
  'asks-accelerator-on-meat-block': 'at least {least} ingoing erythorbate or ascorbate on the meat block',
  'asks-accelerator-on-batch': 'at least {least} ingoing erythorbate or ascorbate on the batch',
  'asks-salt-in-water-phase': 'at least {least} salt in the water phase, {formula}',
} as const;
