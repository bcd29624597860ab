import type { Fault } from '../formula/fault';
import type { Quantity } from '../quantity/quantity';

/** Why something cannot be worked out, or what to do about it: a code, and the figures that cannot be used. */
export type Why = { code: WhyCode; figures?: Record<string, Quantity | string | number> };

/** What cannot be worked out, and why. */
export type CannotCalculate = { cannot: Why[] };

export type WhyCode =
  | 'as-worded'
  | 'ask-for-the-certificate'
  | 'below-coldest-row'
  | 'below-coldest-row-authority'
  | 'binders-outweigh'
  | 'certificate-limit-on-another'
  | 'content-unusable'
  | 'fat-too'
  | 'humid-longer-than-cooked'
  | 'meat-weighs-nothing'
  | 'meat-too'
  | 'no-binder'
  | 'no-first-weight'
  | 'no-holding-table'
  | 'no-reading-given'
  | 'percent-or-weight'
  | 'percentages-above-zero'
  | 'picked-up-in-percent'
  | 'pumped-in-percent'
  | 'salt-unusable'
  | 'target-unusable'
  | 'too-much-for-the-pickle'
  | 'two-readings-at-least'
  | 'weigh-both'
  | 'weigh-them-first'
  | 'which-weight-is-which';

export const cannot = (code: WhyCode, figures?: Why['figures']): CannotCalculate => ({ cannot: [figures ? { code, figures } : { code }] });

/** What the domain found wrong with a figure, and what to do about it. */
export const atFault = ({ fault }: Fault, ...then: WhyCode[]): CannotCalculate => ({
  cannot: [{ code: 'as-worded', figures: { said: fault } }, ...then.map((code): Why => ({ code }))],
});
