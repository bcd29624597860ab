import type { CodedAs } from '../limits/coded';
import type { LimitFaultCode, LimitSlipCode } from '../limits/limit-fault-code';

export type RowFaultCode =
  | 'condition-names-nothing'
  | 'condition-no-figure'
  | 'condition-says-nothing'
  | 'default-unconfirmed'
  | 'confirmed-unread'
  | 'ends-before-it-counts'
  | 'figure-missing'
  | 'id-twice'
  | 'id-unusable'
  | 'no-such-date'
  | 'pair-disagrees'
  | 'pair-not-odd'
  | 'sign-without-figure'
  | 'source-missing'
  | 'title-missing';

export type WholeSetFaultCode =
  | 'counts-from-no-date'
  | 'edition-called-alike'
  | 'edition-counts-earlier'
  | 'replaced-missing'
  | 'replaced-newer'
  | 'replaced-of-another'
  | 'rows-missing'
  | 'set-id-twice'
  | 'set-nameless';

export type SetFaultCode = LimitFaultCode | LimitSlipCode | RowFaultCode | WholeSetFaultCode;

/** Of the set itself where `row` is absent. */
export type SetFault = { set: string; row?: string; because: CodedAs<SetFaultCode> };
