import type { substances } from '@larderbook/contracts';
import type { ConcentrationLimit, CountedAs } from '@larderbook/haccp';
import { counted, typed } from '../../typed';
import type { Editor } from '../editor';
import { ConcentrationFields } from './concentration-fields';

export type ConcentrationDraft = {
  kind: 'concentration';
  substance: (typeof substances)[number] | '';
  min: string;
  max: string;
  printed: string;
  countedAs?: CountedAs;
};

export const concentrationEditor: Editor<ConcentrationLimit, ConcentrationDraft> = {
  empty: () => ({ kind: 'concentration', substance: '', min: '', max: '', printed: '' }),
  draftOf: ({ kind, substance, min, max, maxThousandths, printed, countedAs }) => ({
    kind,
    substance,
    min: typed(min, 2),
    max: maxThousandths === undefined ? typed(max, 2) : typed(maxThousandths, 3),
    printed,
    countedAs,
  }),
  figuresOf: ({ substance, min, max, printed, countedAs }) => ({
    substance,
    min: counted(min, 2),
    ...mostPpm(max),
    printed,
    countedAs,
  }),
  Fields: ConcentrationFields,
};

/** Hundredths of a ppm, and thousandths where hundredths cannot hold it. */
function mostPpm(text: string) {
  const thousandths = counted(text, 3);
  if (thousandths === undefined) return {};
  return { max: Math.floor(thousandths / 10), ...(thousandths % 10 !== 0 && { maxThousandths: thousandths }) };
}
