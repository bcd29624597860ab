import { decimalText } from '../../quantity/decimal';
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
  say: ({ log10, species }) => `at most ${decimalText(log10, 2)} log of C. perfringens while cooling, predicted for ${species}`,
  fault: ({ log10 }) => (isLogs(log10) ? undefined : 'The growth allowed is no whole number of hundredths of a log above zero.'),
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
