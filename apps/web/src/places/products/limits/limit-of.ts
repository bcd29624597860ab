import { criticalLimit } from '@larderbook/contracts';
import { limitFault, scaled, type CriticalLimit } from '@larderbook/haccp';
import { check, type FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { secondsOf } from './duration-text';
import { draftOfLimit, type BoundText, type LimitDraft, type PrintedText, type RangeDraft } from './limit-draft';
import { figuresOfProcess } from './process-draft';

/** A limit that could be judged by, or what is wrong with which field; with the whole, under `limit`. */
export type LimitOf = { value: CriticalLimit; errors?: undefined } | { value?: undefined; errors: FieldErrors };

/** Reads what was typed as a limit. `before` is the limit that is being changed: other figures need another source. */
export function limitOf(draft: LimitDraft, before?: CriticalLimit): LimitOf {
  const { kind, source, conditions } = draft;
  const { value, errors } = check(criticalLimit, { ...figuresOf(draft), kind, source, conditions });
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

/** The figures as the contract writes them; what is no number stays away and is asked for. */
function figuresOf(draft: LimitDraft): object {
  switch (draft.kind) {
    case 'range':
      return {
        measured: draft.measured,
        min: bound(draft.min, draft),
        max: bound(draft.max, draft),
        ...signsOf(draft),
      };
    case 'concentration':
      return {
        substance: draft.substance,
        min: count(draft.min, 2),
        ...mostPpm(draft.max),
        printed: draft.printed,
        countedAs: draft.countedAs,
      };
    case 'dwell':
      return {
        rows: draft.rows.map(({ at, time }) => ({ at: printed(at), seconds: secondsOf(time) })),
        longestGapSeconds: secondsOf(draft.gap),
      };
    case 'cooling':
      return {
        stages: draft.stages.map(({ from, to, within, counted }) => ({
          ...(counted !== 'end of cooking' && { from: printed(from) }),
          to: printed(to),
          withinSeconds: secondsOf(within),
          counted,
        })),
        startWithinSeconds: draft.startWithin.amount === '' ? undefined : (secondsOf(draft.startWithin) ?? NaN),
        longestGapSeconds: secondsOf(draft.gap),
      };
    case 'bandTime':
      return {
        from: printed(draft.from),
        to: printed(draft.to),
        maxSeconds: secondsOf(draft.most),
        longestGapSeconds: secondsOf(draft.gap),
      };
    case 'attestation':
      return { statement: draft.statement.trim(), asks: draft.asks };
    default:
      return { ...figuresOfProcess(draft), ...('gap' in draft && { longestGapSeconds: secondsOf(draft.gap) }) };
  }
}

const count = (text: string, decimals: number): number | undefined => scaled(numberOf(text) ?? NaN, decimals);
const printed = (text: PrintedText) => ({ '°F': count(text['°F'], 2), '°C': count(text['°C'], 2) });

function bound(text: BoundText, { measured }: Pick<RangeDraft, 'measured'>) {
  if (measured !== 'temperature') return count(text.number, 3);
  return text['°F'] === '' && text['°C'] === '' ? undefined : printed(text);
}

/** A sign beside no figure says nothing. */
function signsOf({ signs, ...draft }: RangeDraft) {
  const min = bound(draft.min, draft) === undefined ? undefined : signs?.min;
  const max = bound(draft.max, draft) === undefined ? undefined : signs?.max;
  return min || max ? { signs: { ...(min && { min }), ...(max && { max }) } } : {};
}

/** A maximum in hundredths of a ppm, and exactly in thousandths where hundredths cannot hold it. */
function mostPpm(text: string) {
  const thousandths = count(text, 3);
  if (thousandths === undefined) return {};
  return { max: Math.floor(thousandths / 10), ...(thousandths % 10 !== 0 && { maxThousandths: thousandths }) };
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
