import type { WeightLossLimit } from '@larderbook/haccp';
import { numberOf } from '../../../../../ui/keypad-text';
import type { Editor } from '../editor';
import { WeightLossFields } from './weight-loss-fields';

export type WeightLossDraft = { kind: 'weightLoss'; percent: string };

export const weightLossEditor: Editor<WeightLossLimit, WeightLossDraft> = {
  empty: () => ({ kind: 'weightLoss', percent: '' }),
  draftOf: ({ kind, percent }) => ({ kind, percent: String(percent) }),
  figuresOf: ({ percent }) => ({ percent: numberOf(percent) }),
  Fields: WeightLossFields,
};
