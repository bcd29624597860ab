import { MASSES } from '../../quantity/mass';
import { partsPerMillion } from '../../quantity/percent';
import type { Kind } from '../kind';
import { none } from '../none';
import type { WeightLossLimit } from './weight-loss-limit';

export const weightLoss: Kind<WeightLossLimit> = {
  takenAs: 'curve',
  isOfCore: false,
  isChill: false,
  unitsRead: () => MASSES,
  fault: ({ percent }) => (partsPerMillion(percent) ? undefined : { code: 'loss-no-percentage' }),
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
