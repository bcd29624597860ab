import type { Deviation, LotHead } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { isQuiet, todaySections, type Today } from './today-sections';

const made = { personId: '', name: 'Ivo Tarn', at: '2026-05-10T14:05:00Z', recordedAt: '2026-05-10T14:05:00Z', station: '' };
const nothing: Today = {
  at: made.at,
  recalls: [],
  openDeviations: [],
  toDestroy: [],
  inWork: [],
  onHold: [],
  toReview: [],
  cleared: [],
  overdueInstruments: [],
  plansMissing: [],
};
const lot = (lotId: string, deadline?: number, isRunning = deadline !== undefined): LotHead => ({
  lotId,
  code: lotId,
  productId: '',
  productName: 'Smoked sausage',
  standing: 'in-work',
  because: [],
  startedAt: made.at,
  openDeviations: 0,
  packages: 0,
  packagesLeft: 0,
  judgedOtherwise: [],
  running: isRunning ? { controlPointId: '', name: 'Chill', bound: { code: 'cooling.bound' }, deadline } : undefined,
});
const deviation = (deviationId: string, of: Partial<Deviation>): Deviation => ({
  deviationId,
  number: 1,
  description: [],
  form: 'critical',
  open: true,
  opened: made,
  shippedAlready: false,
  recurrence: [],
  actions: [],
  voidedActions: [],
  closingsTakenBack: [],
  atStake: none,
  undecided: none,
  covered: true,
  products: [],
  dispositions: [],
  ...of,
});
const none = { value: 0, unit: 'kg' as const, grams: 0 };
const ofLot = (lotId: string) => ({ lot: { lotId, code: lotId, productName: 'Smoked sausage' } });

test('the stage that is due first stands first, a held lot’s among them, and one without a deadline last', () => {
  const { running } = todaySections({
    ...nothing,
    inWork: [lot('a', undefined, true), lot('b', 300), lot('c', 100)],
    onHold: [lot('d', 200)],
  });
  expect(running.map(({ lotId }) => lotId)).toEqual(['c', 'd', 'b', 'a']);
});

test('a stage that will miss its bound stands before one at risk, and both before what is due first', () => {
  const warned = (lotId: string, deadline: number, state: 'at risk' | 'will miss'): LotHead => ({
    ...lot(lotId, deadline),
    warning: {
      controlPointId: '',
      name: 'Chill',
      forecast: {
        use: 'advice, never acceptance',
        limitId: '',
        target: { value: '40', unit: '°F' },
        state,
        because: [],
        next: [],
        arrival: {},
        medium: { celsius: 1, from: 'measured' },
        takeMoreReadings: false,
      },
    },
  });
  const { running } = todaySections({
    ...nothing,
    inWork: [lot('a', 100), warned('b', 200, 'at risk')],
    onHold: [warned('c', 300, 'will miss')],
  });
  expect(running.map(({ lotId }) => lotId)).toEqual(['c', 'b', 'a']);
});

test('a lot whose stage runs is not said to be in work a second time', () => {
  const { inWork } = todaySections({ ...nothing, inWork: [lot('a', 100), lot('b')] });
  expect(inWork.map(({ lotId }) => lotId)).toEqual(['b']);
});

test('a held lot stands with its own deviations', () => {
  const { onHold, openDeviations } = todaySections({
    ...nothing,
    onHold: [lot('a')],
    openDeviations: [deviation('1', ofLot('a')), deviation('2', ofLot('a'))],
  });
  expect(onHold[0]?.deviations.map(({ deviationId }) => deviationId)).toEqual(['1', '2']);
  expect(openDeviations).toEqual([]);
});

test('a delivery’s deviation stands by itself, and one already shipped only among the possible recalls', () => {
  const recall = deviation('1', { ...ofLot('a'), shippedAlready: true });
  const delivery = deviation('2', { receipt: { receiptId: 'r', code: 'R-0001', itemName: 'Pork shoulder' } });
  const sections = todaySections({ ...nothing, recalls: [recall], openDeviations: [recall, delivery] });
  expect(sections.recalls).toEqual([recall]);
  expect(sections.openDeviations).toEqual([delivery]);
});

test('no open deviation is lost, even of a lot that stands nowhere else', () => {
  expect(todaySections({ ...nothing, openDeviations: [deviation('1', ofLot('gone'))] }).openDeviations).toHaveLength(1);
});

test('what was condemned is in sight until it is destroyed', () => {
  const condemned: Today['toDestroy'][number] = {
    dispositionId: 'x',
    decision: 'condemn',
    lotId: 'a',
    code: 'a',
    weight: none,
    reason: '',
    speaksFor: [],
    by: '',
    at: made.at,
    toDestroy: true,
    voidedDestructions: [],
  };
  const sections = todaySections({ ...nothing, toDestroy: [condemned] });
  expect(sections.toDestroy).toEqual([condemned]);
  expect(isQuiet(sections)).toBe(false);
});

test('a day on which nothing waits is quiet', () => {
  expect(isQuiet(todaySections(nothing))).toBe(true);
  expect(isQuiet(todaySections({ ...nothing, cleared: [lot('a')] }))).toBe(false);
});

test('what the rules of now judge otherwise stands apart from what is cleared', () => {
  const again = { ...lot('a'), judgedOtherwise: ['Cook'] };
  const { lookAgain, cleared } = todaySections({ ...nothing, cleared: [again, lot('b')] });
  expect([lookAgain, cleared].map((lots) => lots.map(({ lotId }) => lotId))).toEqual([[again.lotId], [lot('b').lotId]]);
});
