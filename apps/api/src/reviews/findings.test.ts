import type { Deviation, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { codesOf } from '../platform/codes-of.test-data';
import { action, aDeviation, aLot, anInput, aPoint, blocking, decided, entry, findings, made, tooCold } from './a-reviewed-lot.test-data';
import { isReady } from './findings';

test('a lot with nothing amiss is ready, and says what was met', () => {
  const found = findings(aLot(), []);
  expect(isReady(found)).toBe(true);
  expect(found).toEqual([
    {
      about: 'control-point',
      kind: 'met',
      what: [{ code: 'point-met', figures: { point: 'Cooking' } }],
      blocks: false,
      controlPointId: 'cook',
    },
  ]);
});

describe('a lot is not ready', () => {
  test.each<[string, Lot, Deviation[], string[][]]>([
    ['with nothing put in', aLot({ inputs: [] }), [], [['missing', 'nothing-put-in']]],
    [
      'with nothing put in that was not corrected away',
      aLot({ inputs: [{ ...anInput, amendedBy: 'j' }] }),
      [],
      [['missing', 'nothing-put-in']],
    ],
    ['with nothing packed', aLot({ packings: [] }), [], [['missing', 'nothing-packed']]],
    [
      'with a control point nobody recorded at',
      aLot({ controlPoints: [aPoint({ stands: 'not-started', settled: false })] }),
      [],
      [['missing', 'point-not-recorded']],
    ],
    [
      'with a stage still running',
      aLot({ controlPoints: [aPoint({ stands: 'running', settled: false })] }),
      [],
      [['missing', 'point-running']],
    ],
    [
      'with a doubt that nobody settled',
      aLot({ controlPoints: [aPoint({ stands: 'undetermined', settled: false })] }),
      [],
      [['undetermined', 'point-undetermined']],
    ],
    [
      'with a missed limit and an open deviation',
      aLot({ controlPoints: [aPoint({ stands: 'missed', settled: false, judged: [tooCold] })] }),
      [aDeviation()],
      [
        ['missed', 'point-missed', 'range-below'],
        ['open', 'deviation-open', 'as-worded'],
      ],
    ],
    [
      'with a deviation open on a delivery in it',
      aLot(),
      [aDeviation({ receipt: { receiptId: 'r', code: 'R-0007', itemName: 'Pork' } })],
      [['open', 'deviation-open', 'as-worded']],
    ],
  ])('%s', (_case, lot, deviations, expected) => {
    expect(blocking(lot, deviations)).toEqual(expected);
  });
});

test('a missed limit that people settled is shown and does not block', () => {
  const lot = aLot({ controlPoints: [aPoint({ stands: 'missed', settled: true, judged: [tooCold] })] });
  const found = findings(lot, [aDeviation({ open: false, actions: [action], ...decided })]);
  expect(isReady(found)).toBe(true);
  expect(found.map(({ kind, what }) => [kind, ...codesOf(what)])).toEqual([
    ['settled', 'point-missed-settled', 'range-below'],
    ['settled', 'closed-decided', 'as-worded'],
  ]);
  expect(found[0]?.what[1]).toEqual({ verdict: tooCold.verdict, tells: 'because' });
  const released = { code: 'decided-release', figures: { weight: { value: '10', unit: 'kg' } } };
  expect(found[1]?.what[0]).toEqual({ code: 'closed-decided', figures: { number: String(4), decided: [released] } });
});

test.each([
  [aDeviation(), { code: 'record-the-action' }],
  [aDeviation({ actions: [action] }), { code: 'decide-what-becomes', figures: { weight: { value: '10', unit: 'kg' } } }],
  [aDeviation({ actions: [action], ...decided }), { code: 'close-it' }],
])('an open deviation says what is next', (deviation, next) => {
  expect(findings(aLot(), [deviation]).find(({ kind }) => kind === 'open')?.next).toEqual([next]);
});

test('what was left out of the formula is for the reviewer to judge, a meat too once there is meat', () => {
  const target = { itemId: 'm', itemName: 'Marjoram', part: 'ingredient' as const, percent: 0.2, weighedGrams: 0 };
  const targets = [target, { ...target, itemName: 'Pork belly', part: 'meat' as const }, { ...target, itemName: 'Salt', weighedGrams: 5 }];
  const said = (lot: Lot) =>
    findings(lot)
      .filter(({ kind, blocks }) => kind === 'missing' && !blocks)
      .flatMap(({ what, next = [] }) => [...what, ...next]);
  expect(isReady(findings(aLot({ targets })))).toBe(true);
  expect(said(aLot({ targets }))).toEqual([
    { code: 'ingredient-not-weighed-in', figures: { item: 'Marjoram' } },
    { code: 'weigh-it-in' },
    { code: 'meat-not-put-in', figures: { item: 'Pork belly' } },
    { code: 'put-it-in' },
  ]);
  expect(codesOf(said(aLot({ targets, meatBlockGrams: 0 })))).toEqual(['ingredient-not-weighed-in', 'weigh-it-in']);
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
    what: [
      {
        code: 'entry-clarified',
        figures: {
          entry: { code: 'entry-readings', figures: { count: 2, point: 'Cooking' } },
          word: { code: 'word-not-of-the-core' },
          reason: 'Probe on the table.',
          who: 'Ida Marsh',
        },
      },
    ],
    blocks: false,
    controlPointId: 'cook',
  });
});
