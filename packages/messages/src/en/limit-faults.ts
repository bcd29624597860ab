import type { LimitFaultCode } from '@larderbook/haccp';

/** Why nothing can be judged against a limit: beside it while it is written, in what keeps a plan, and in a verdict. */
export const limitFaults = {
  'band-not-warmer': 'The band does not end warmer than it begins.',
  'bound-in-degrees': 'Only a temperature has °F or °C.',
  'bound-not-in-degrees': 'A range of temperatures needs its figures in °F or °C.',
  'bound-unusable': 'A figure of the limit is no usable number.',
  'degree-hours-base-unusable': 'The base or the pH is no usable number.',
  'degree-hours-classes-unusable': 'The classes do not rise to one without a top.',
  'degree-hours-unusable': 'A number of degree-hours is no whole number above zero.',
  'gap-unusable': 'The longest tolerated gap is missing.',
  'growth-bound-unusable': 'The growth allowed is no whole number of hundredths of a log above zero.',
  'holding-times-unusable': 'The table of holding times is empty or its rows contradict each other.',
  'ion-not-held': 'The substance of the limit holds no {ion} to count.',
  'kill-authority-missing': 'Name the process authority that supports it, and where the letter is filed.',
  'kill-by-mean': 'A mean of many studies is no basis for a decision: half of all cases resist longer.',
  'kill-floor-unusable': 'The temperature from which kill is counted is no usable number.',
  'kill-law-slipped': 'D is below {d} or z below {z}: look for a slipped decimal point.',
  'kill-law-unusable': 'D, z or the reference temperature is no usable number.',
  'kill-target-unusable': 'The target is no whole number of hundredths of a log above zero.',
  'least-above-most': 'The least is more than the most.',
  'loss-no-percentage': 'The loss asked for is no percentage above 0.',
  'neither-least-nor-most': 'There is neither a least nor a most.',
  'stage-not-colder': 'A stage of the cooling does not end colder than it begins.',
  'thickness-unprinted': 'No row is printed for {thickness}: the thickest is 27 in (69 cm).',
  'thickness-unusable': 'The thickness is no usable number.',
} as const satisfies Record<LimitFaultCode, string>;
