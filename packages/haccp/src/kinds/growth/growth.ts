import { isLogs } from '../../quantity/is-logs';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { GrowthLimit } from './growth-limit';

export const growth: Kind<GrowthLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: true,
  unitsRead: () => DEGREES,
  fault: ({ log10 }) => (isLogs(log10) ? undefined : { code: 'growth-bound-unusable' }),
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
