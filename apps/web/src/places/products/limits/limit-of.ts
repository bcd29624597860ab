import { criticalLimit, fault as carried } from '@larderbook/contracts';
import { limitFault, type CriticalLimit, type LimitFault } from '@larderbook/haccp';
import { check, type FieldErrors } from '../../../api/check';
import { editorOf } from './kinds/editors';
import { draftOfLimit, type LimitDraft } from './limit-draft';

/** A limit that could be judged by, or what is wrong: with which field, or with the whole. */
export type LimitOf =
  | { value: CriticalLimit; errors?: undefined; fault?: undefined }
  | { value?: undefined; errors: FieldErrors; fault?: LimitFault };

/** `before` is the limit being changed: other figures need another source. A fault of the whole is under `limit`. */
export function limitOf(draft: LimitDraft, before?: CriticalLimit): LimitOf {
  const { kind, source, conditions } = draft;
  const { value, errors } = check(criticalLimit, { ...editorOf(kind).figuresOf(draft), kind, source, conditions });
  if (!value) return { errors };
  const fault = limitFault(value);
  if (fault) return { errors: {}, fault };
  if (before && isSameSource(value, before) && !isSameFigures(value, before)) {
    return {
      errors: { 'source.citation': carried('source-of-own-figures') },
    };
  }
  return { value };
}

const isSameSource = (one: CriticalLimit, other: CriticalLimit): boolean => one.source.citation.trim() === other.source.citation.trim();

/** Compared as typed; the longest gap is the shop's own affair. */
function isSameFigures(one: CriticalLimit, other: CriticalLimit): boolean {
  const figures = (limit: CriticalLimit) => JSON.stringify({ ...draftOfLimit(limit), source: undefined, gap: undefined });
  return figures(one) === figures(other);
}
