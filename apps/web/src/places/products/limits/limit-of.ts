import { criticalLimit } from '@larderbook/contracts';
import { limitFault, type CriticalLimit } from '@larderbook/haccp';
import { check, type FieldErrors } from '../../../api/check';
import { editorOf } from './kinds/editors';
import { draftOfLimit, type LimitDraft } from './limit-draft';

/** A limit that could be judged by, or what is wrong with which field; with the whole, under `limit`. */
export type LimitOf = { value: CriticalLimit; errors?: undefined } | { value?: undefined; errors: FieldErrors };

/** Reads what was typed as a limit. `before` is the limit that is being changed: other figures need another source. */
export function limitOf(draft: LimitDraft, before?: CriticalLimit): LimitOf {
  const { kind, source, conditions } = draft;
  const { value, errors } = check(criticalLimit, { ...editorOf(kind).figuresOf(draft), kind, source, conditions });
  if (!value) return { errors: inWords(errors) };
  const fault = limitFault(value);
  if (fault) return { errors: { limit: fault } };
  if (before && isSameSource(value, before) && !isSameFigures(value, before)) {
    return {
      errors: { 'source.citation': 'The figures are no longer those of this source. Name the source of yours.' },
    };
  }
  return { value };
}

const missing: [RegExp, string][] = [
  [/^source\.citation$/, 'Name the source: a rule, a guideline, or your own validation.'],
  [/^printed$/, 'Write the limit as its source prints it.'],
  [/^substance$/, 'Choose the substance.'],
  [/^authority$/, 'Name the process authority, and where the letter is filed.'],
  [/^log10$/, 'Give a number of logs, above zero.'],
  [/^percent$/, 'Give the loss in percent.'],
  [/hundredths$|thousandths$/, 'Give a number.'],
  [/most$/, 'Give a whole number of degree-hours.'],
  [/^statement$/, 'Write the statement that is confirmed.'],
  [/^longestGapSeconds$/, 'Give a length of time from 1 second to 7 days.'],
  [/econds$/, 'Give a length of time, at most 30 days.'],
];

/** The contract's complaint, or a better sentence for a field that was left empty. */
const inWords = (errors: FieldErrors): FieldErrors =>
  Object.fromEntries(Object.entries(errors).map(([name, said]) => [name, missing.find(([field]) => field.test(name))?.[1] ?? said]));

const isSameSource = (one: CriticalLimit, other: CriticalLimit): boolean => one.source.citation.trim() === other.source.citation.trim();

/** Compared as typed; how long a gap between readings may be is the shop's own affair. */
function isSameFigures(one: CriticalLimit, other: CriticalLimit): boolean {
  const figures = (limit: CriticalLimit) => JSON.stringify({ ...draftOfLimit(limit), source: undefined, gap: undefined });
  return figures(one) === figures(other);
}
