import type { Finding } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { blockers } from './blockers';

const aFinding = (finding: Partial<Finding>): Finding => ({
  about: 'control-point',
  kind: 'missing',
  what: '',
  blocks: true,
  ...finding,
});
const missedChill = aFinding({
  kind: 'missed',
  what: 'Chilling: missed.',
  next: 'Settle its deviation and close it.',
  controlPointId: 'chill',
});
const itsDeviation = aFinding({
  about: 'deviation',
  kind: 'open',
  what: 'Deviation 5: Chilling.',
  next: 'Close it.',
  controlPointId: 'chill',
  deviationId: 'five',
});

test('a missed limit and the deviation it opened are one thing to do', () => {
  expect(blockers([missedChill, itsDeviation])).toEqual([
    { kind: 'missed', what: 'Chilling: missed.', next: 'Close it.', deviationId: 'five' },
  ]);
});

test('a second deviation of the same control point stays in sight', () => {
  const second = { ...itsDeviation, what: 'Deviation 6: Chilling.', deviationId: 'six' };
  expect(blockers([missedChill, itsDeviation, second]).map(({ deviationId }) => deviationId)).toEqual(['five', 'six']);
});

test('a deviation opened by hand stands for itself', () => {
  const byHand = aFinding({
    about: 'deviation',
    kind: 'open',
    what: 'Deviation 7: A bag was torn.',
    deviationId: 'seven',
  });
  expect(blockers([aFinding({ what: 'Cooking: nothing was recorded.', controlPointId: 'cook' }), byHand])).toHaveLength(2);
});

test('what is settled or only flagged does not block', () => {
  expect(blockers([aFinding({ kind: 'settled', blocks: false }), aFinding({ about: 'entry', kind: 'flagged', blocks: false })])).toEqual(
    [],
  );
});
