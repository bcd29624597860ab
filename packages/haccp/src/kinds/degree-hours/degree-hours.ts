import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import { fermentationFault } from './fermentation-fault';
import type { DegreeHoursLimit } from './fermentation-limit';

export const degreeHours: Kind<DegreeHoursLimit> = {
  takenAs: 'curve',
  isOfCore: false,
  isChill: false,
  unitsRead: () => [...DEGREES, 'pH'],
  fault: fermentationFault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
