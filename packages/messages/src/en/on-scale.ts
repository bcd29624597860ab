/** Why what is to be weighed is not what the formula asks for, or why nothing is. */
export const onScale = {
  'nearest-on-scale': 'The formula asks for {aimed}, which is not surely within the limit on this scale: {nearest} is the nearest that is.',
  'nothing-on-scale': 'In steps of {step} nothing the scale shows is surely within the limit. Take a finer scale.',
  'scale-step-unusable': 'The step of the scale cannot be used.',
} as const;
