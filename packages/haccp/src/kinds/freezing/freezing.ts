import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { FreezingLimit } from './freezing-limit';
import { freezingFault } from './judge-freezing';

export const freezing: Kind<FreezingLimit> = {
  takenAs: 'curve',
  isOfCore: false,
  isChill: false,
  unitsRead: () => DEGREES,
  fault: freezingFault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
