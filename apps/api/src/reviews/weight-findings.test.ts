import type { Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { codesOf } from '../platform/codes-of.test-data';
import { massOf, type EnteredMass, type Quantity } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import { aLot, aPoint, entry, findings, weights, kg, made, remarks } from './a-reviewed-lot.test-data';
import { isReady } from './findings';

/** "160 g" as data. */
const figure = (text: string): Quantity => {
  const [value = '', unit = 'g'] = text.split(' ');
  return { value, unit: unit as Quantity['unit'] };
};

describe('an ingredient off its target', () => {
  const salted = (targetGrams: number | undefined, ...weights: EnteredMass[]): Lot =>
    aLot({
      targets: [
        {
          itemId: 's',
          itemName: 'Salt',
          part: 'ingredient',
          percent: 1.6,
          targetGrams,
          weighedGrams: weights.reduce((sum, one) => sum + Number(massOf(one) / 1_000_000_000n) / 1e6, 0),
        },
      ],
      weighings: weights.map((one, index) => ({
        ...{ weighingId: `w${index}`, item: { itemId: 's', name: 'Salt' }, weight: { ...one, grams: 0 }, judged: [] },
        ...entry,
      })),
    });
  const weighedIn = (code: string, weighed: string, target: string, off: string, parts?: string[]) => ({
    code,
    figures: {
      ...{ item: 'Salt', weighed: figure(weighed), target: figure(target), off: figure(off) },
      ...(parts && { count: parts.length, parts: parts.map(figure) }),
    },
  });
  const g = (value: number): EnteredMass => ({ value, unit: 'g' });

  test.each<[string, Lot, object[]]>([
    ['as targeted: nothing is said', salted(160, g(160)), []],
    ['a twentieth off: nothing is said', salted(160, g(168)), []],
    ['in two parts that add up: nothing is said', salted(160, g(100), g(60)), []],
    ['without a target there is nothing to be off', salted(undefined, g(160)), []],
    ['a little more than a twentieth too little', salted(160, g(151)), [weighedIn('too-little-weighed-in', '151 g', '160 g', '9 g')]],
    ['weighed twice', salted(160, g(160), g(160)), [weighedIn('too-much-in-parts', '320 g', '160 g', '160 g', ['160 g', '160 g'])]],
    ['in the unit of the scale', salted(453.59237, { value: 2, unit: 'lb' }), [weighedIn('too-much-weighed-in', '2 lb', '1 lb', '1 lb')]],
  ])('%s', (_case, lot, said) => {
    const all = findings(lot);
    expect(remarks(all)).toEqual(said);
    expect(isReady(all)).toBe(true);
  });

  test('a weighing that was voided or corrected is not counted among them', () => {
    const lot = salted(100, g(160), g(160));
    const [first, second] = lot.weighings as [Lot['weighings'][number], Lot['weighings'][number]];
    const weighings = [{ ...first, amendedBy: 'v', voided: { reason: 'Written twice.', made } }, second];
    const targets = lot.targets.map((target) => ({ ...target, weighedGrams: 160 }));
    expect(remarks(findings({ ...lot, weighings, targets }))).toEqual([
      weighedIn('too-much-weighed-in', '160 g', '100 g', '60 g'),
      {
        code: 'entry-voided',
        figures: {
          entry: { code: 'entry-weighing', figures: { item: 'Salt' } },
          ...{ who: 'Ida Marsh', by: 'Ida Marsh', reason: 'Written twice.' },
        },
      },
    ]);
  });

  test('nobody is blamed for what the scale of the plan cannot show', () => {
    const errors = { mass: { thousandths: 5000, unit: 'g' as const, step: 10_000 } };
    const controlPoints = [{ ...aPoint(), controlPoint: { ...aPoint().controlPoint, errors } }];
    expect(remarks(findings({ ...salted(20, g(30)), controlPoints }))).toEqual([]);
    expect(remarks(findings({ ...salted(20, g(31)), controlPoints }))).toHaveLength(1);
  });
});

describe('weight beyond the loss the formula expects', () => {
  const removal = (kind: string, value: number): Lot['removals'][number] => ({
    ...{ removalId: kind, rowId: kind, kind, weight: { value, unit: 'kg', grams: value * 1000 }, note: '', made },
  });
  const loss = (code: string, figures: Record<string, string>, beyond: [code: string, by: string]) => [
    {
      code,
      figures: { wentIn: figure('10 kg'), ...Object.fromEntries(Object.entries(figures).map(([name, text]) => [name, figure(text)])) },
    },
    {
      code: beyond[0],
      figures: { yield: figure('90 %'), least: figure('0.5 kg'), most: figure('1.5 kg'), beyond: figure(beyond[1]) },
    },
  ];
  const gone = ['more-gone-than-expected', '1.5 kg'] as [string, string];

  test.each<[string, Partial<LotWeights>, Lot['removals'], object[]]>([
    ['as expected, and not weighed: no black mark', {}, [], []],
    ['as expected, and weighed as loss in cooking', { removed: kg(1) }, [removal('loss in cooking', 1)], []],
    ['more than the band, and no record says where', { packed: kg(7) }, [], loss('so-much-lost', { lost: '3 kg' }, gone)],
    [
      'more than the band, weighed as loss in cooking',
      { packed: kg(7), removed: kg(2.9) },
      [removal('loss in cooking', 2.9)],
      loss('so-much-lost-recorded', { lost: '3 kg', weighed: '2.9 kg' }, gone),
    ],
    ['a sample and waste are no loss', { packed: kg(7), removed: kg(2) }, [removal('sample', 0.5), removal('waste', 1.5)], []],
    ['what was condemned is no loss', { packed: kg(6), condemned: kg(3) }, [], []],
    ['what went into another lot is no loss', { packed: kg(6), reworked: kg(3) }, [], []],
    [
      'a counted difference explains nothing',
      { packed: kg(7), removed: kg(2) },
      [removal('counted difference', 2)],
      loss('so-much-lost-recorded', { lost: '3 kg', weighed: '2 kg' }, gone),
    ],
    ['less than the band', { packed: kg(9.8) }, [], loss('so-little-lost', { lost: '0.2 kg' }, ['more-left-than-expected', '0.3 kg'])],
    [
      'more came out than went in',
      { packed: kg(11) },
      [],
      loss('more-than-went-in', { more: '1 kg' }, ['more-left-than-expected', '1.5 kg']),
    ],
    ['nothing is packed yet', { packed: 0n }, [], []],
  ])('%s', (_case, some, removals, said) => {
    const all = findings(aLot({ removals }), [], { weights: weights(some) });
    expect(remarks(all)).toEqual(said);
    expect(isReady(all)).toBe(true);
    for (const { about, kind, next } of all)
      if (kind === 'flagged') expect([about, codesOf(next)]).toEqual(['weight', [expect.stringMatching(/weigh-again$/)]]);
  });
});
