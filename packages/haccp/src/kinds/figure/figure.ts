import type { Kind } from '../kind';
import { none } from '../none';
import { figureFault, sayFigureLimit, type FigureLimit } from './figure-limit';

export const figure: Kind<FigureLimit> = {
  takenAs: 'value',
  isOfCore: false,
  isChill: false,
  unitsRead: ({ unit }) => [unit],
  say: sayFigureLimit,
  fault: figureFault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
