import type { Deviation, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { action, aDeviation, aLot, anInput, aPoint, blocking, decided, entry, findings, made, tooCold } from './a-reviewed-lot.test-data';
import { isReady } from './findings';

test('a lot with nothing amiss is ready, and says what was met', () => {
  const found = findings(aLot(), []);
  expect(isReady(found)).toBe(true);
  expect(found).toEqual([
    {
      about: 'control-point',
      kind: 'met',
      what: 'Cooking: every limit is met.',
      blocks: false,
      controlPointId: 'cook',
    },
  ]);
});

describe('a lot is not ready', () => {
  test.each<[string, Lot, Deviation[], [string, string][]]>([
    ['with nothing put in', aLot({ inputs: [] }), [], [['missing', 'Nothing has been put into this lot.']]],
    [
      'with nothing put in that was not corrected away',
      aLot({ inputs: [{ ...anInput, amendedBy: 'j' }] }),
      [],
      [['missing', 'Nothing has been put into this lot.']],
    ],
    ['with nothing packed', aLot({ packings: [] }), [], [['missing', 'Nothing of this lot has been packed.']]],
    [
      'with a control point nobody recorded at',
      aLot({ controlPoints: [aPoint({ stands: 'not-started', settled: false })] }),
      [],
      [['missing', 'Cooking: nothing was recorded.']],
    ],
    [
      'with a stage still running',
      aLot({ controlPoints: [aPoint({ stands: 'running', settled: false })] }),
      [],
      [['missing', 'Cooking: still running.']],
    ],
    [
      'with a doubt that nobody settled',
      aLot({ controlPoints: [aPoint({ stands: 'undetermined', settled: false })] }),
      [],
      [['undetermined', 'Cooking: undetermined.']],
    ],
    [
      'with a missed limit and an open deviation',
      aLot({ controlPoints: [aPoint({ stands: 'missed', settled: false, judged: [tooCold] })] }),
      [aDeviation()],
      [
        ['missed', 'Cooking: missed. 140 °F is 5 °F below 145 °F.'],
        ['open', 'Deviation 4: Core 5 °F short.'],
      ],
    ],
    [
      'with a deviation open on a delivery in it',
      aLot(),
      [aDeviation({ receipt: { receiptId: 'r', code: 'R-0007', itemName: 'Pork' } })],
      [['open', 'Deviation 4: Core 5 °F short.']],
    ],
  ])('%s', (_case, lot, deviations, expected) => {
    expect(blocking(lot, deviations)).toEqual(expected);
  });
});

test('a missed limit that people settled is shown and does not block', () => {
  const lot = aLot({ controlPoints: [aPoint({ stands: 'missed', settled: true, judged: [tooCold] })] });
  const found = findings(lot, [aDeviation({ open: false, actions: [action], ...decided })]);
  expect(isReady(found)).toBe(true);
  expect(found.map(({ kind, what }) => [kind, what])).toEqual([
    ['settled', 'Cooking: missed, and settled. 140 °F is 5 °F below 145 °F.'],
    ['settled', 'Deviation 4: Core 5 °F short. Closed; release 10 kg.'],
  ]);
});

test.each([
  [aDeviation(), 'Record the corrective action.'],
  [aDeviation({ actions: [action] }), 'Decide what becomes of 10 kg.'],
  [aDeviation({ actions: [action], ...decided }), 'Close it.'],
])('an open deviation says what is next', (deviation, next) => {
  expect(findings(aLot(), [deviation]).find(({ kind }) => kind === 'open')?.next).toBe(next);
});

test('what was left out of the formula is for the reviewer to judge, a meat too once there is meat', () => {
  const target = { itemId: 'm', itemName: 'Marjoram', part: 'ingredient' as const, percent: 0.2, weighedGrams: 0 };
  const targets = [target, { ...target, itemName: 'Pork belly', part: 'meat' as const }, { ...target, itemName: 'Salt', weighedGrams: 5 }];
  const said = (lot: Lot) =>
    findings(lot)
      .filter(({ kind, blocks }) => kind === 'missing' && !blocks)
      .map(({ what, next }) => `${what} ${next}`);
  expect(isReady(findings(aLot({ targets })))).toBe(true);
  expect(said(aLot({ targets }))).toEqual([
    'Marjoram stands in the formula and was not weighed in. Weigh it in, or say in the statement why it was left out.',
    'Pork belly stands in the formula and was not put in. Put it in, or say in the statement why it was left out.',
  ]);
  expect(said(aLot({ targets, meatBlockGrams: 0 }))).toHaveLength(1);
});

test('what was said of readings is for the reviewer to judge, with who said it and why', () => {
  const said = { clarificationId: 's', word: 'not of the core' as const, reason: 'Probe on the table.', made };
  const reading = {
    ...{ readingId: 'r', controlPointId: 'cook', probe: '', entered: { value: 168, unit: '°F' as const }, judged: [] },
    ...{ ...entry, clarifications: [said] },
  };
  const found = findings(aLot({ controlPoints: [aPoint({ readings: [reading, { ...reading, readingId: 'q' }] })] }), []);
  expect(isReady(found)).toBe(true);
  expect(found.at(-1)).toEqual({
    about: 'entry',
    kind: 'flagged',
    what: '2 readings at Cooking: not of the core. Probe on the table. (Ida Marsh)',
    blocks: false,
    controlPointId: 'cook',
  });
});
