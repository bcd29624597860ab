/** The usual cautions, said the same way wherever a figure of that kind is worked out. */
export const cautions = {
  curing: 'Curing salts are toxic in excess: weigh on a scale fine enough, never by spoon, and keep them apart and dyed.',
  limits:
    'A published limit is a reference. Your plan must be validated; local codes, the inspector and a licensed process ' +
    'authority decide.',
  model: 'A model estimate supports a decision and never makes it. Whether product may be used is for a process authority.',
  notARecord: 'This is not a record: it clears nothing and is kept nowhere.',
} as const;
