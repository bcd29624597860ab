import type { Fault, FaultCode } from '../formula/fault';
import type { CodedAs } from '../limits/coded';
import type { OutOfRange } from '../growth/listeria-range';

export type Why = CodedAs<WhyCode>;

export type CannotCalculate = { cannot: Why[] };

export type WhyCode =
  | FaultCode
  | 'add-readings-of-cooling'
  | 'as-weather-report'
  | 'enter-it-again'
  | 'enter-in-hectopascal'
  | 'enter-the-height'
  | 'loss-no-percentage'
  | 'medium-unusable'
  | 'nothing-read-of-cooling'
  | 'nothing-usable-read'
  | 'one-reading-of-cooling'
  | 'read-core-and-medium'
  | 'target-no-temperature'
  | `outside-${OutOfRange['variable']}`
  | 'ask-for-the-certificate'
  | 'below-coldest-row'
  | 'below-coldest-row-authority'
  | 'binders-outweigh'
  | 'check-height-and-barometer'
  | 'certificate-limit-on-another'
  | 'content-unusable'
  | 'fat-too'
  | 'height-of-no-shop'
  | 'humid-longer-than-cooked'
  | 'meat-too'
  | 'no-binder'
  | 'no-cooking-time'
  | 'no-first-weight'
  | 'no-holding-table'
  | 'no-length-of-storage'
  | 'no-reading-given'
  | 'no-storage'
  | 'percent-or-weight'
  | 'percentages-above-zero'
  | 'pressure-not-of-air'
  | 'pressure-not-there'
  | 'picked-up-in-percent'
  | 'pumped-in-percent'
  | 'salt-unusable'
  | 'target-unusable'
  | 'too-much-for-the-pickle'
  | 'two-readings-at-least'
  | 'weigh-both'
  | 'weighings-not-true'
  | 'weigh-them-first'
  | 'which-weight-is-which';

export const cannot = (code: WhyCode, figures?: Why['figures']): CannotCalculate => ({ cannot: [figures ? { code, figures } : { code }] });

export const atFault = ({ fault }: Fault, ...then: WhyCode[]): CannotCalculate => ({
  cannot: [fault, ...then.map((code): Why => ({ code }))],
});
