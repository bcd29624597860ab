import type { Lot } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { aLot, anInput, aPacking, aPoint, entry, findings, made, remarks } from './a-reviewed-lot.test-data';

const packing = { code: 'entry-packing', figures: { code: '26061-1-P1' } };
const loss = { code: 'removed-loss-in-cooking' };

test('what was corrected or voided of goods and stages is shown with who did it and why', () => {
  const correction: Lot['corrections'][number] = {
    ...{ correctionId: 'c', about: 'packing', id: 'k', what: packing, voided: false, reason: 'Counted again.', made },
    changes: [{ what: { code: 'says-packages' }, before: '6', after: '5' }],
  };
  const corrections = [correction, { ...correction, what: loss, voided: true }];
  const signed = { who: 'Ida Marsh', reason: 'Counted again.' };
  expect(remarks(findings(aLot({ corrections })))).toEqual([
    { code: 'thing-corrected', figures: { thing: packing, ...signed } },
    { code: 'thing-voided', figures: { thing: loss, ...signed } },
  ]);
});

const aReadingAt = { code: 'entry-reading', figures: { point: 'Cooking' } };
const readingsAt = (count: number) => ({ code: 'entry-readings', figures: { count, point: 'Cooking' } });

test('flagged entries alike in kind, flags and person are one finding', () => {
  const reading = { readingId: 'r', controlPointId: 'cook', probe: '', entered: { value: 168, unit: '°F' as const }, judged: [], ...entry };
  const late = { ...reading, flags: ['recorded-late' as const] };
  const other = { ...late, made: { ...made, name: 'Nell Varrow' } };
  const readings = [late, { ...late, readingId: 'q' }, { ...other, readingId: 'p' }, { ...reading, readingId: 'o' }];
  expect(remarks(findings(aLot({ controlPoints: [aPoint({ readings })] })))).toEqual([
    { code: 'entry-flagged', figures: { entry: readingsAt(2), who: 'Ida Marsh', flags: [{ code: 'recorded-late' }] } },
    { code: 'entry-flagged', figures: { entry: aReadingAt, who: 'Nell Varrow', flags: [{ code: 'recorded-late' }] } },
  ]);
});

test('flagged weighings of one person are one finding, whichever control points they are judged at', () => {
  const weight = { value: 25, unit: 'g' as const, grams: 25 };
  const weighing = { item: { itemId: 'c', name: 'Curing salt' }, weight, judged: [], ...entry, flags: ['recorded-late' as const] };
  const weighings = [
    { ...weighing, weighingId: 'v', controlPointId: 'nitrite' },
    { ...weighing, weighingId: 'w', controlPointId: 'phosphate' },
    { ...weighing, weighingId: 'x' },
  ];
  const found = findings(aLot({ weighings })).filter(({ about, kind }) => about === 'entry' && kind === 'flagged');
  expect(found.map(({ what, controlPointId }) => [what, controlPointId])).toEqual([
    [
      [
        {
          code: 'entry-flagged',
          figures: { entry: { code: 'entry-weighings', figures: { count: 3 } }, who: 'Ida Marsh', flags: [{ code: 'recorded-late' }] },
        },
      ],
      undefined,
    ],
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
  const flags = [{ code: 'before-the-lot' }, { code: 'recorded-late' }];
  expect(remarks(findings(lot))).toEqual([
    {
      code: 'entry-corrects',
      figures: { entry: { code: 'entry-input', figures: { code: 'R-0007' } }, who: 'Ida Marsh', reason: 'Read the wrong scale' },
    },
    { code: 'entry-flagged', figures: { entry: packing, who: 'Ida Marsh', flags } },
  ]);
});
