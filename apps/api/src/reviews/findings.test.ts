import type { ControlPointOnLot, Deviation, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { findings, isReady } from './findings';

const made = {
  personId: 'p',
  name: 'Ida Marsh',
  at: '2026-03-02T10:00:00.000Z',
  recordedAt: '2026-03-02T10:00:00.000Z',
  station: '',
};
const source = { citation: 'House plan', edition: '1', confirmed: true };
const weight = { value: 10, unit: 'kg' as const, grams: 10_000 };
const entry = { flags: [], made, reason: '' };

const aPoint = (
  point: Partial<Pick<ControlPointOnLot, 'stands' | 'settled' | 'judged' | 'readings' | 'openDeviationId'>> = {},
): ControlPointOnLot => ({
  controlPoint: {
    controlPointId: 'cook',
    stepId: 's',
    name: 'Cooking',
    kind: 'critical',
    hazard: 'Salmonella',
    takenAs: 'curve',
    limits: [],
    probes: [],
    monitoring: { what: 'Core temperature.', how: 'Probe.', howOften: 'Every cook.', who: 'Operator.' },
    correctiveAction: 'Hold.',
    verification: '',
  },
  stands: 'met',
  settled: true,
  judged: [],
  readings: [],
  bands: [],
  ...point,
});

const tooCold = {
  limitId: 'l',
  limit: { kind: 'attestation' as const, statement: 'Held', source },
  verdict: {
    kind: 'missed' as const,
    measured: '140 °F',
    limit: '≥ 145 °F',
    because: 'The core was 5 °F short.',
    notes: [],
    source,
  },
};

const aDeviation = (deviation: Partial<Deviation> = {}): Deviation => ({
  deviationId: 'd',
  number: 4,
  description: 'Core 5 °F short.',
  open: true,
  opened: made,
  shippedAlready: false,
  form: 'critical',
  recurrence: [],
  actions: [],
  atStake: weight,
  undecided: weight,
  covered: false,
  products: [],
  dispositions: [],
  ...deviation,
});
const disposition: Deviation['dispositions'][number] = {
  dispositionId: 'x',
  decision: 'release',
  lotId: 'lot',
  code: '26061-1',
  weight,
  reason: 'Cooked on to 150 °F.',
  basis: 'worked on and measured again',
  speaksFor: [{ deviationId: 'd', number: 4 }],
  toDestroy: false, voidedDestructions: [],
  by: 'Ida Marsh',
  at: made.at,
};
const action: Deviation['actions'][number] = {
  actionId: 'a',
  action: { form: 'critical', cause: 'c', control: 'c', prevention: 'p', product: 'p' },
  made,
};
const decided = { dispositions: [disposition], covered: true };

const anInput = {
  inputId: 'i',
  from: { receiptId: 'r', code: 'R-0007', what: 'Pork' },
  weight,
  trimmed: weight,
  ...entry,
};
const aPacking = {
  packingId: 'k',
  rowId: 'k',
  code: '26061-1-P1',
  lotId: 'lot',
  lotCode: '26061-1',
  productName: 'Ring',
  count: 5,
  left: 5,
  net: weight,
  useBy: '2026-04-01',
  flags: [],
  made,
};

/** A lot with nothing amiss. */
const aLot = (lot: Partial<Lot> = {}): Lot => ({
  lotId: 'lot',
  code: '26061-1',
  productId: 'p',
  productName: 'Ring',
  standing: 'to-review',
  because: '',
  startedAt: made.at,
  openDeviations: 0,
  packages: 5,
  packagesLeft: 5,
  note: '',
  flags: [],
  made,
  formula: { formulaId: 'f', version: 1, expectedYieldPercent: 90 },
  plan: { planId: 'p', version: 1, title: 'Ring' },
  useByDays: 30,
  storage: '',
  meatBlockGrams: 10_000,
  targets: [],
  weighings: [],
  removals: [],
  deviations: [],
  corrections: [],
  reviews: [],
  shipments: [],
  controlPoints: [aPoint()],
  inputs: [anInput],
  packings: [aPacking],
  ...lot,
});

const blocking = (lot: Lot, deviations: Deviation[] = []) =>
  findings(lot, deviations)
    .filter(({ blocks }) => blocks)
    .map(({ kind, what }) => [kind, what]);

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
        ['missed', 'Cooking: missed. The core was 5 °F short.'],
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
    ['settled', 'Cooking: missed, and settled. The core was 5 °F short.'],
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

test('an ingredient left out is for the reviewer to judge', () => {
  const target = { itemId: 'm', itemName: 'Marjoram', part: 'ingredient' as const, percent: 0.2, weighedGrams: 0 };
  const found = findings(
    aLot({
      targets: [
        target,
        { ...target, itemName: 'Pork', part: 'meat' },
        { ...target, itemName: 'Salt', weighedGrams: 5 },
      ],
    }),
    [],
  );
  expect(isReady(found)).toBe(true);
  expect(found[0]).toMatchObject({ kind: 'missing', what: 'Marjoram stands in the formula and was not weighed in.' });
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
    'Packing 26061-1-P1 by Ida Marsh: dated before the lot was started; ' +
      'recorded more than 15 minutes after it was taken.',
  ]);
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
