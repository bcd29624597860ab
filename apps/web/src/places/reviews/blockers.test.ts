import type { Finding } from '@larderbook/contracts';
import { coded } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { blockers } from './blockers';

const aFinding = (finding: Partial<Finding>): Finding => ({
  about: 'control-point',
  kind: 'missing',
  what: [],
  blocks: true,
  ...finding,
});
const missedChill = aFinding({
  kind: 'missed',
  what: [coded('point-missed')],
  next: [coded('settle-its-deviation')],
  controlPointId: 'chill',
});
const itsDeviation = aFinding({
  about: 'deviation',
  kind: 'open',
  what: [coded('deviation-open', { number: String(5) })],
  next: [coded('close-it')],
  controlPointId: 'chill',
  deviationId: 'five',
});

test('a missed limit and the deviation it opened are one thing to do', () => {
  expect(blockers([missedChill, itsDeviation])).toEqual([
    { kind: 'missed', what: [coded('point-missed')], next: [coded('close-it')], deviationId: 'five' },
  ]);
});

test('a second deviation of the same control point stays in sight', () => {
  const second = { ...itsDeviation, what: [coded('deviation-open', { number: String(6) })], deviationId: 'six' };
  expect(blockers([missedChill, itsDeviation, second]).map(({ deviationId }) => deviationId)).toEqual(['five', 'six']);
});

test('a deviation opened by hand stands for itself', () => {
  const byHand = aFinding({
    about: 'deviation',
    kind: 'open',
    what: [coded('deviation-open', { number: String(7) })],
    deviationId: 'seven',
  });
  expect(blockers([aFinding({ what: [coded('point-not-recorded')], controlPointId: 'cook' }), byHand])).toHaveLength(2);
});

test('what is settled or only flagged does not block', () => {
  expect(blockers([aFinding({ kind: 'settled', blocks: false }), aFinding({ about: 'entry', kind: 'flagged', blocks: false })])).toEqual(
    [],
  );
});
