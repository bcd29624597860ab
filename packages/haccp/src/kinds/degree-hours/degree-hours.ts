import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import { fermentationFault } from './fermentation-fault';
import type { DegreeHoursLimit } from './fermentation-limit';
import { sayDegreeHours } from './say-fermentation';

export const degreeHours: Kind<DegreeHoursLimit> = {
  takenAs: 'curve',
  isOfCore: false,
  isChill: false,
  unitsRead: () => [...DEGREES, 'pH'],
  say: sayDegreeHours,
  fault: fermentationFault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
