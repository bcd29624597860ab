import type { ControlPointOnLot, Deviation, Lot } from '@larderbook/contracts';
import { coded, massOf } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import { codesOf } from '../platform/codes-of.test-data';
import { findings as found, type Beside } from './findings';

const nothingAside = { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n };
export const kg = (value: number) => massOf({ value, unit: 'kg' });
/** Ten kilograms went in, nine were packed: what the formula expects. */
export const weights = (some: Partial<LotWeights> = {}): LotWeights => ({
  wentIn: kg(10),
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: kg(9),
  shipped: 0n,
  aside: nothingAside,
  ...some,
});
export const findings = (lot: Lot, deviations: Deviation[] = [], beside: Partial<Beside> = {}) =>
  found(lot, { deviations, strange: [], weights: weights(), unit: 'kg', ...beside });

export const made = {
  personId: 'p',
  name: 'Ida Marsh',
  at: '2026-03-02T10:00:00.000Z',
  recordedAt: '2026-03-02T10:00:00.000Z',
  station: '',
};
const source = { citation: 'House plan', edition: '1', confirmed: true };
const weight = { value: 10, unit: 'kg' as const, grams: 10_000 };
export const entry = { flags: [], made, reason: '' };

export const aPoint = (
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

export const tooCold = {
  limitId: 'l',
  limit: { kind: 'attestation' as const, statement: 'Held', source },
  verdict: {
    kind: 'missed' as const,
    finding: 'range-below',
    figures: {
      read: { value: '140', unit: '°F' as const },
      by: { value: '5', unit: '°F' as const },
      bound: { value: '145', unit: '°F' as const },
    },
    notes: [],
  },
};

export const aDeviation = (deviation: Partial<Deviation> = {}): Deviation => ({
  deviationId: 'd',
  number: 4,
  description: [coded('as-worded', { said: 'Core 5 °F short.' })],
  open: true,
  opened: made,
  shippedAlready: false,
  form: 'critical',
  recurrence: [],
  actions: [],
  voidedActions: [],
  closingsTakenBack: [],
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
  toDestroy: false,
  voidedDestructions: [],
  by: 'Ida Marsh',
  at: made.at,
};
export const action: Deviation['actions'][number] = {
  actionId: 'a',
  action: { form: 'critical', cause: 'c', control: 'c', prevention: 'p', product: 'p' },
  made,
};
export const decided = { dispositions: [disposition], covered: true };

export const anInput = {
  inputId: 'i',
  from: { receiptId: 'r', code: 'R-0007', what: 'Pork' },
  weight,
  trimmed: weight,
  ...entry,
};
export const aPacking = {
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
export const aLot = (lot: Partial<Lot> = {}): Lot => ({
  lotId: 'lot',
  code: '26061-1',
  productId: 'p',
  productName: 'Ring',
  standing: 'to-review',
  because: [],
  startedAt: made.at,
  openDeviations: 0,
  packages: 5,
  packagesLeft: 5,
  judgedOtherwise: [],
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

export const blocking = (lot: Lot, deviations: Deviation[] = []) =>
  findings(lot, deviations)
    .filter(({ blocks }) => blocks)
    .map(({ kind, what }) => [kind, ...codesOf(what)]);

/** What is the reviewer's to judge. */
export const remarks = (found: ReturnType<typeof findings>) => found.filter(({ kind }) => kind === 'flagged').flatMap(({ what }) => what);
