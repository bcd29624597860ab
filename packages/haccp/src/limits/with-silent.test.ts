import { expect, test } from 'vitest';
import { judgeWeightLoss } from '../kinds/weight-loss/judge-weight-loss';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { degrees } from '../quantity/degrees';
import { judgeDwell } from '../kinds/dwell/judge-dwell';
import type { WeightLossLimit } from '../kinds/weight-loss/weight-loss-limit';
import { withSilent } from './with-silent';

const silent = (probe: string) => ({ code: 'probe-silent', figures: { probe } });

const loss: WeightLossLimit = { kind: 'weightLoss', percent: 35, source: cookedMeat65Log.source };
const met = judgeWeightLoss(
  [
    { at: 0, mass: 1000n },
    { at: 1, mass: 600n },
  ],
  loss,
  true,
);
const short = judgeWeightLoss(
  [
    { at: 0, mass: 1000n },
    { at: 1, mass: 700n },
  ],
  loss,
  true,
);
const cooked = judgeDwell([{ at: 0, temperature: degrees(160, '°F') }], cookedMeat65Log, { ended: true });

test.each([
  ['a marked piece that was never weighed', met],
  ['a core that was never read', cooked],
])('%s keeps the limit from being met', (_case, verdict) => {
  expect(verdict.kind).toBe('met');
  expect(withSilent(verdict, [])).toEqual(verdict);
  expect(withSilent(verdict, ['right', 'left'])).toMatchObject({
    kind: 'undetermined',
    finding: 'probes-silent',
    figures: { probes: 'right, left' },
    notes: expect.arrayContaining([silent('right'), silent('left')]),
  });
});

test('it never makes a miss milder', () => {
  expect(withSilent(short, ['piece 2'])).toEqual({ ...short, notes: [silent('piece 2')] });
});
