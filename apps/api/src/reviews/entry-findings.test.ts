import type { Lot } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { aLot, anInput, aPacking, aPoint, entry, findings, made, remarks } from './a-reviewed-lot.test-data';

test('what was corrected or voided of goods and stages is shown with who did it and why', () => {
  const correction: Lot['corrections'][number] = {
    ...{ correctionId: 'c', about: 'packing', id: 'k', what: 'Packing 26061-1-P1', voided: false, reason: 'Counted again.', made },
    changes: [{ what: 'Packages', before: '6', after: '5', isMoment: false }],
  };
  const corrections = [correction, { ...correction, what: 'Loss in cooking', voided: true }];
  expect(remarks(findings(aLot({ corrections })))).toEqual([
    'Packing 26061-1-P1: corrected by Ida Marsh (Counted again.).',
    'Loss in cooking: voided by Ida Marsh (Counted again.).',
  ]);
});

test('flagged entries alike in kind, flags and person are one finding', () => {
  const reading = { readingId: 'r', controlPointId: 'cook', probe: '', entered: { value: 168, unit: '°F' as const }, judged: [], ...entry };
  const late = { ...reading, flags: ['recorded-late' as const] };
  const other = { ...late, made: { ...made, name: 'Nell Varrow' } };
  const readings = [late, { ...late, readingId: 'q' }, { ...other, readingId: 'p' }, { ...reading, readingId: 'o' }];
  expect(remarks(findings(aLot({ controlPoints: [aPoint({ readings })] })))).toEqual([
    '2 readings at Cooking by Ida Marsh: recorded more than 15 minutes after it was taken.',
    'Reading at Cooking by Nell Varrow: recorded more than 15 minutes after it was taken.',
  ]);
});

test('odd and corrected entries are shown with who made them; what was corrected speaks through its correction', () => {
  const lot = aLot({
    inputs: [
      { ...anInput, amendedBy: 'j', flags: ['in-the-future'] },
      { ...anInput, inputId: 'j', amends: 'i', reason: 'Read the wrong scale' },
    ],
    packings: [{ ...aPacking, flags: ['before-the-lot', 'recorded-late'] }],
  });
  expect(
    findings(lot, [])
      .filter(({ kind }) => kind === 'flagged')
      .map(({ what }) => what),
  ).toEqual([
    'Input of R-0007 by Ida Marsh: corrects an earlier entry (Read the wrong scale).',
    'Packing 26061-1-P1 by Ida Marsh: dated before the lot was started; ' + 'recorded more than 15 minutes after it was taken.',
  ]);
});
