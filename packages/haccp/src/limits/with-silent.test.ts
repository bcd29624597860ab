import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { judgeWeightLoss } from '../drying/judge-weight-loss';
import type { WeightLossLimit } from './limit';
import { withSilent } from './with-silent';

const loss: WeightLossLimit = { kind: 'weightLoss', percent: 35, source: cookedMeat65Log.source };
const met = judgeWeightLoss([{ at: 0, mass: 1000n }, { at: 1, mass: 600n }], loss, true);
const short = judgeWeightLoss([{ at: 0, mass: 1000n }, { at: 1, mass: 700n }], loss, true);

test('a marked piece that was never weighed keeps a loss of weight from being met', () => {
  expect(withSilent(met, loss, [])).toEqual(met);
  expect(withSilent(met, loss, ['piece 2'])).toMatchObject({
    kind: 'undetermined',
    margin: undefined,
    because: 'The pieces that were weighed have lost enough; of piece 2 nothing is known.',
    next: 'Weigh piece 2, or hold the lot.',
    notes: ['No reading of piece 2.'],
  });
});

test('it never makes a miss milder, and of a core it is said', () => {
  expect(withSilent(short, loss, ['piece 2'])).toEqual({ ...short, notes: ['No reading of piece 2.'] });
  expect(withSilent(met, cookedMeat65Log, ['right'])).toEqual({ ...met, notes: ['No reading of right.'] });
});
