import type { Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { massOf, type EnteredMass } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import { aLot, aPoint, entry, findings, weights, kg, made, remarks } from './a-reviewed-lot.test-data';
import { isReady } from './findings';

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
  const g = (value: number): EnteredMass => ({ value, unit: 'g' });

  test.each<[string, Lot, string[]]>([
    ['as targeted: nothing is said', salted(160, g(160)), []],
    ['a twentieth off: nothing is said', salted(160, g(168)), []],
    ['in two parts that add up: nothing is said', salted(160, g(100), g(60)), []],
    ['without a target there is nothing to be off', salted(undefined, g(160)), []],
    [
      'a little more than a twentieth too little',
      salted(160, g(151)),
      ['Salt: 151 g was weighed in for a target of 160 g, 9 g too little.'],
    ],
    [
      'weighed twice',
      salted(160, g(160), g(160)),
      ['Salt: 320 g was weighed in for a target of 160 g, in 2 weighings (160 g, 160 g), 160 g too much.'],
    ],
    [
      'in the unit of the scale',
      salted(453.59237, { value: 2, unit: 'lb' }),
      ['Salt: 2 lb was weighed in for a target of 1 lb, 1 lb too much.'],
    ],
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
      'Salt: 160 g was weighed in for a target of 100 g, 60 g too much.',
      'Weighing of Salt by Ida Marsh: voided by Ida Marsh (Written twice.).',
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
  const band = 'The formula expects 90 % to be left, a loss of 0.5 kg to 1.5 kg';

  test.each<[string, Partial<LotWeights>, Lot['removals'], string[]]>([
    ['as expected, and not weighed: no black mark', {}, [], []],
    ['as expected, and weighed as loss in cooking', { removed: kg(1) }, [removal('loss in cooking', 1)], []],
    [
      'more than the band, and no record says where',
      { packed: kg(7) },
      [],
      [`3 kg of 10 kg is lost. ${band}: 1.5 kg more is gone than it explains.`],
    ],
    [
      'more than the band, weighed as loss in cooking',
      { packed: kg(7), removed: kg(2.9) },
      [removal('loss in cooking', 2.9)],
      [`3 kg of 10 kg is lost, of it 2.9 kg recorded as loss. ${band}: 1.5 kg more is gone than it explains.`],
    ],
    ['a sample and waste are no loss', { packed: kg(7), removed: kg(2) }, [removal('sample', 0.5), removal('waste', 1.5)], []],
    ['what was condemned is no loss', { packed: kg(6), condemned: kg(3) }, [], []],
    ['what went into another lot is no loss', { packed: kg(6), reworked: kg(3) }, [], []],
    [
      'a counted difference explains nothing',
      { packed: kg(7), removed: kg(2) },
      [removal('counted difference', 2)],
      [`3 kg of 10 kg is lost, of it 2 kg recorded as loss. ${band}: 1.5 kg more is gone than it explains.`],
    ],
    [
      'less than the band',
      { packed: kg(9.8) },
      [],
      [`Only 0.2 kg is lost of 10 kg that went in. ${band}: 0.3 kg more came out than it explains.`],
    ],
    [
      'more came out than went in',
      { packed: kg(11) },
      [],
      [`1 kg more came out than all of 10 kg that went in. ${band}: 1.5 kg more came out than it explains.`],
    ],
    ['nothing is packed yet', { packed: 0n }, [], []],
  ])('%s', (_case, some, removals, said) => {
    const all = findings(aLot({ removals }), [], { weights: weights(some) });
    expect(remarks(all)).toEqual(said);
    expect(isReady(all)).toBe(true);
    for (const { about, kind, next } of all)
      if (kind === 'flagged') expect([about, next]).toEqual(['weight', expect.stringMatching(/[Ww]eigh the packages again|Weigh/)]);
  });
});
