import type { Measured, PrintedTemperature, RangeLimit, StrictSigns } from '@larderbook/haccp';
import { counted, noPrinted, printedOf, printedText, typed, type PrintedText } from '../../typed';
import type { Editor } from '../editor';
import { RangeFields } from './range-fields';

/** A bound is a temperature or a plain number. */
export type BoundText = PrintedText & { number: string };

/** `signs`: where the figure of a bound is itself outside. */
export type RangeDraft = { kind: 'range'; measured: Measured; min: BoundText; max: BoundText; signs?: StrictSigns };

const noBound: BoundText = { ...noPrinted, number: '' };

export const rangeEditor: Editor<RangeLimit, RangeDraft> = {
  empty: () => ({ kind: 'range', measured: 'temperature', min: noBound, max: noBound }),
  draftOf: ({ kind, measured, min, max, signs }) => ({ kind, measured, min: boundText(min), max: boundText(max), signs }),
  figuresOf: (draft) => ({
    measured: draft.measured,
    min: boundOf(draft.min, draft),
    max: boundOf(draft.max, draft),
    ...signsOf(draft),
  }),
  Fields: RangeFields,
};

const boundText = (bound: PrintedTemperature | number | undefined): BoundText =>
  typeof bound === 'object' ? { ...printedText(bound), number: '' } : { ...noBound, number: typed(bound, 3) };

function boundOf(text: BoundText, { measured }: Pick<RangeDraft, 'measured'>) {
  if (measured !== 'temperature') return counted(text.number, 3);
  return text['°F'] === '' && text['°C'] === '' ? undefined : printedOf(text);
}

/** A sign beside no figure says nothing. */
function signsOf({ signs, ...draft }: RangeDraft) {
  const min = boundOf(draft.min, draft) === undefined ? undefined : signs?.min;
  const max = boundOf(draft.max, draft) === undefined ? undefined : signs?.max;
  return min || max ? { signs: { ...(min && { min }), ...(max && { max }) } } : {};
}
