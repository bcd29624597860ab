import type { CodedAs } from './coded';

export type LimitFaultCode =
  | 'band-not-warmer'
  | 'bound-in-degrees'
  | 'bound-not-in-degrees'
  | 'bound-unusable'
  | 'degree-hours-base-unusable'
  | 'degree-hours-classes-unusable'
  | 'degree-hours-unusable'
  | 'gap-unusable'
  | 'growth-bound-unusable'
  | 'holding-times-unusable'
  | 'ion-not-held'
  | 'kill-authority-missing'
  | 'kill-by-mean'
  | 'kill-floor-unusable'
  | 'kill-law-slipped'
  | 'kill-law-unusable'
  | 'kill-target-unusable'
  | 'least-above-most'
  | 'loss-no-percentage'
  | 'neither-least-nor-most'
  | 'stage-not-colder'
  | 'thickness-unprinted'
  | 'thickness-unusable';

/** A contradiction in print; judging would still be possible. */
export type LimitSlipCode =
  | 'band-no-time'
  | 'comparison-missing'
  | 'gap-unusable'
  | 'row-longer'
  | 'row-not-hotter'
  | 'stage-hotter'
  | 'stage-no-time';

export type LimitFault = CodedAs<LimitFaultCode>;
export type LimitSlip = CodedAs<LimitSlipCode>;
