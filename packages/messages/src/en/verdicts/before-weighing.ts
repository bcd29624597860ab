/** What to do where a limit is missed before anything is weighed: there is no lot to hold. */
export const beforeWeighing = {
  'take-less-binder': 'Take less of it before anything is mixed.',
  'replace-less': 'Replace less of the accelerator.',
  'aim-at-less': 'Aim at less, or pump less, before the pickle is made.',
  'weigh-more': 'Weigh more of it, or take another source.',
  'weigh-less': 'Weigh less of it.',
  'less-phosphate': 'Take less phosphate, or pump less, before the pickle is made.',
  'less-water': 'Take less water, or dry it further, and analyse again before it is labelled so.',
} as const;
