import type { FreezingLimit } from '@larderbook/haccp';
import { numberOf } from '../../../../../ui/keypad-text';
import { durationText, secondsOf, type DurationText } from '../../duration-text';
import type { Editor } from '../editor';
import { FreezingFields } from './freezing-fields';

export type FreezingDraft = { kind: 'freezing'; by: 'centre' | 'freezer'; thickness: string; unit: 'in' | 'cm'; gap: DurationText };

const TWO_HOURS: DurationText = { amount: '2', unit: 'h' };

export const freezingEditor: Editor<FreezingLimit, FreezingDraft> = {
  empty: () => ({ kind: 'freezing', by: 'centre', thickness: '', unit: 'in', gap: TWO_HOURS }),
  draftOf: ({ kind, read, longestGapSeconds }) => ({
    kind,
    by: read.what,
    thickness: read.what === 'freezer' ? String(read.thickness.value) : '',
    unit: read.what === 'freezer' ? read.thickness.unit : 'in',
    gap: durationText(longestGapSeconds),
  }),
  figuresOf: ({ by, thickness, unit, gap }) => ({
    read: by === 'centre' ? { what: by } : { what: by, thickness: { value: numberOf(thickness), unit } },
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: FreezingFields,
};
