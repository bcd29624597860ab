import type { CodedAs } from '../limits/coded';

export type LineFaultCode =
  | 'ingredient-no-name'
  | 'ingredient-listed-twice'
  | 'ingredient-no-percentage'
  | 'ingredient-not-above-zero'
  | 'ingredient-too-much'
  | 'ingredient-too-fine';

export type FaultCode =
  | LineFaultCode
  | 'analysis-unusable'
  | 'aw-unusable'
  | 'batch-weighs-nothing'
  | 'binder-below-nothing'
  | 'certificate-missing'
  | 'certificate-of-another-lot'
  | 'certificate-unusable'
  | 'lighter-than-before-pumping'
  | 'meat-weighs-nothing'
  | 'mix-below-nothing'
  | 'natural-source-weighs-nothing'
  | 'no-accelerator'
  | 'no-ion-to-count'
  | 'no-other-ingredients'
  | 'no-weight-to-take-from'
  | 'not-analysed'
  | 'pH-unusable'
  | 'package-weighs-nothing'
  | 'packages-unusable'
  | 'percent-of-weight-unusable'
  | 'percent-unusable'
  | 'phosphate-unusable'
  | 'pickle-weighs-nothing'
  | 'ppm-unusable'
  | 'product-weighs-nothing'
  | 'salt-or-water-below-nothing'
  | 'substance-below-nothing'
  | 'water-share-unusable'
  | 'weigh-meat-and-pickle'
  | 'weight-below-nothing'
  | 'yield-unusable';

/** The unusable figure by its code. Never an exception, never zero. */
export type Fault = { fault: CodedAs<FaultCode> };

export type OrFault<Result> = Result | Fault;

export const isFault = (result: object): result is Fault => 'fault' in result;

export const faultOf = (code: FaultCode, figures?: Fault['fault']['figures']): Fault => ({ fault: figures ? { code, figures } : { code } });
