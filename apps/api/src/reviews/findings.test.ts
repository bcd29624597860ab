import type { ControlPointOnLot, Deviation, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { massOf, type EnteredMass } from '@larderbook/haccp';
import type { LotHolds } from '../lots/lot-holds.queries';
import { findings as found, isReady, type Beside } from './findings';

const nothingAside = { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n };
const kg = (value: number) => massOf({ value, unit: 'kg' });
/** Ten kilograms went in, nine were packed: what the formula expects. */
const holds = (held: Partial<LotHolds> = {}): LotHolds => ({
  wentIn: kg(10),
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: kg(9),
  shipped: 0n,
  aside: nothingAside,
  ...held,
});
const findings = (lot: Lot, deviations: Deviation[] = [], beside: Partial<Beside> = {}) =>
  found(lot, { deviations, strange: [], held: holds(), unit: 'kg', ...beside });

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

test('what was left out of the formula is for the reviewer to judge, a meat too once there is meat', () => {
  const target = { itemId: 'm', itemName: 'Marjoram', part: 'ingredient' as const, percent: 0.2, weighedGrams: 0 };
  const targets = [target, { ...target, itemName: 'Pork belly', part: 'meat' as const }, { ...target, itemName: 'Salt', weighedGrams: 5 }];
  const said = (lot: Lot) => findings(lot).filter(({ kind, blocks }) => kind === 'missing' && !blocks).map(({ what, next }) => `${what} ${next}`);
  expect(isReady(findings(aLot({ targets })))).toBe(true);
  expect(said(aLot({ targets }))).toEqual([
    'Marjoram stands in the formula and was not weighed in. Weigh it in, or say in the statement why it was left out.',
    'Pork belly stands in the formula and was not put in. Put it in, or say in the statement why it was left out.',
  ]);
  expect(said(aLot({ targets, meatBlockGrams: 0 }))).toHaveLength(1);
});

const remarks = (found: ReturnType<typeof findings>) => found.filter(({ kind }) => kind === 'flagged').map(({ what }) => what);

describe('an ingredient off its target', () => {
  const salted = (targetGrams: number | undefined, ...weights: EnteredMass[]): Lot =>
    aLot({
      targets: [
        { itemId: 's', itemName: 'Salt', part: 'ingredient', percent: 1.6, targetGrams, weighedGrams: weights.reduce((sum, one) => sum + Number(massOf(one) / 1_000_000_000n) / 1e6, 0) },
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
    ['a little more than a twentieth too little', salted(160, g(151)), ['Salt: 151 g was weighed in for a target of 160 g, 9 g too little.']],
    [
      'weighed twice',
      salted(160, g(160), g(160)),
      ['Salt: 320 g was weighed in for a target of 160 g, in 2 weighings (160 g, 160 g), 160 g too much.'],
    ],
    ['in the unit of the scale', salted(453.59237, { value: 2, unit: 'lb' }), ['Salt: 2 lb was weighed in for a target of 1 lb, 1 lb too much.']],
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

  test.each<[string, Partial<LotHolds>, Lot['removals'], string[]]>([
    ['as expected, and not weighed: no black mark', {}, [], []],
    ['as expected, and weighed as loss in cooking', { removed: kg(1) }, [removal('loss in cooking', 1)], []],
    ['more than the band, and no record says where', { packed: kg(7) }, [], [`3 kg of 10 kg is lost. ${band}: 1.5 kg more is gone than it explains.`]],
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
    ['less than the band', { packed: kg(9.8) }, [], [`Only 0.2 kg is lost of 10 kg that went in. ${band}: 0.3 kg more came out than it explains.`]],
    ['more came out than went in', { packed: kg(11) }, [], [`1 kg more came out than all of 10 kg that went in. ${band}: 1.5 kg more came out than it explains.`]],
    ['nothing is packed yet', { packed: 0n }, [], []],
  ])('%s', (_case, held, removals, said) => {
    const all = findings(aLot({ removals }), [], { held: holds(held) });
    expect(remarks(all)).toEqual(said);
    expect(isReady(all)).toBe(true);
    for (const { about, kind, next } of all) if (kind === 'flagged') expect([about, next]).toEqual(['weight', expect.stringMatching(/[Ww]eigh the packages again|Weigh/)]);
  });
});

describe('fewer readings than the plan asks for', () => {
  const minutes = (at: number) => new Date(Date.parse(made.at) + at * 60_000).toISOString();
  const aReading = (at: number, reading: Partial<ControlPointOnLot['readings'][number]> = {}) => ({
    ...{ readingId: `r${at}`, controlPointId: 'cook', probe: '', entered: { value: 160, unit: '°F' as const }, judged: [] },
    ...{ ...entry, made: { ...made, at: minutes(at) } },
    ...reading,
  });
  const read = (point: Partial<ControlPointOnLot['controlPoint']>, ...readings: ControlPointOnLot['readings']): Lot => {
    const whole = aPoint({ readings });
    return aLot({ controlPoints: [{ ...whole, controlPoint: { ...whole.controlPoint, ...point } }] });
  };
  const halfHourly = { frequency: { everyMinutes: 30 } };
  const corrected = { amendedBy: 'x' };
  const voided = { amendedBy: 'x', voided: { reason: 'Not ours.', made } };
  const said = { clarifications: [{ clarificationId: 's', word: 'not of the core' as const, reason: 'Air.', made }] };

  test.each<[string, Lot, string[]]>([
    ['as asked', read(halfHourly, aReading(0), aReading(30), aReading(60)), []],
    [
      'two hours without one',
      read(halfHourly, aReading(0), aReading(30), aReading(150)),
      ['Cooking: 3 readings, 2 h at the longest without one, where the plan asks for one at least every 30 min: 3 fewer than it asks.'],
    ],
    [
      'a corrected, a voided and a reading that was not of the core do not count',
      read(halfHourly, aReading(0), aReading(30, corrected), aReading(60, voided), aReading(90, said), aReading(120)),
      ['Cooking: 2 readings, 2 h at the longest without one, where the plan asks for one at least every 30 min: 3 fewer than it asks.'],
    ],
    [
      'what the product lies in does not count',
      read({ ...halfHourly, surroundings: { name: 'air' } }, aReading(0), aReading(30, { probe: 'air' }), aReading(60)),
      ['Cooking: 2 readings, 1 h at the longest without one, where the plan asks for one at least every 30 min: 1 fewer than it asks.'],
    ],
    [
      'one where three are asked',
      read({ frequency: { timesInALot: 3 } }, aReading(0)),
      ['Cooking: 1 reading, where the plan asks for one at least 3 times in a lot: 2 fewer than it asks.'],
    ],
    ['where the plan says it in words alone nothing is known', read({}, aReading(0), aReading(600)), []],
    ['weighings are judged by their sum', read({ takenAs: 'weighings', frequency: { timesInALot: 3 } }, aReading(0)), []],
    [
      'a probe that the plan names and nobody read',
      read({ probes: ['left', 'right'] }, aReading(0, { probe: 'left' })),
      ['Cooking: the plan names right, and nobody read it.'],
    ],
    ['one named probe, and readings that do not name it', read({ probes: ['core'] }, aReading(0)), []],
  ])('%s', (_case, lot, expected) => {
    const about = findings(lot).filter((one) => one.about === 'control-point' && one.kind === 'flagged');
    expect(about.map(({ what }) => what)).toEqual(expected);
    for (const one of about) expect([one.controlPointId, one.blocks, Boolean(one.next)]).toEqual(['cook', false, true]);
  });

  test('of none at all it is said once that nothing was recorded', () => {
    const lot = read(halfHourly);
    const [only, ...others] = findings({ ...lot, controlPoints: lot.controlPoints.map((point) => ({ ...point, stands: 'not-started' as const })) });
    expect([only?.what, others]).toEqual(['Cooking: nothing was recorded.', []]);
  });
});

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
