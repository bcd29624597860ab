import type { FigureLimit, FigureUnit, StrictSigns } from '@larderbook/haccp';
import { counted, typed } from '../../typed';
import type { Editor } from '../editor';
import { FigureFields } from './figure-fields';

export type FigureDraft = {
  kind: 'figure';
  of: string;
  unit: FigureUnit;
  min: string;
  max: string;
  signs?: StrictSigns;
  printed?: string;
};

export const figureEditor: Editor<FigureLimit, FigureDraft> = {
  empty: () => ({ kind: 'figure', of: '', unit: '%', min: '', max: '' }),
  draftOf: ({ kind, of, unit, min, max, signs, printed }) => ({ kind, of, unit, min: typed(min, 3), max: typed(max, 3), signs, printed }),
  figuresOf: ({ of, unit, min, max, signs, printed }) => ({ of, unit, min: counted(min, 3), max: counted(max, 3), signs, printed }),
  Fields: FigureFields,
};
