import { MASSES } from '../../quantity/mass';
import { partsPerMillion } from '../../quantity/percent';
import type { Kind } from '../kind';
import { none } from '../none';
import { sayWeightLoss } from './judge-weight-loss';
import type { WeightLossLimit } from './weight-loss-limit';

export const weightLoss: Kind<WeightLossLimit> = {
  takenAs: 'curve',
  isOfCore: false,
  isChill: false,
  unitsRead: () => MASSES,
  say: sayWeightLoss,
  fault: ({ percent }) => (partsPerMillion(percent) ? undefined : 'The loss asked for is no percentage above zero.'),
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
