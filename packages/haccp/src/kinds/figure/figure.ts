import type { Kind } from '../kind';
import { none } from '../none';
import { figureFault, figureSlips, type FigureLimit } from './figure-limit';

export const figure: Kind<FigureLimit> = {
  takenAs: 'value',
  isOfCore: false,
  isChill: false,
  unitsRead: ({ unit }) => [unit],
  fault: figureFault,
  slips: figureSlips,
  temperatures: none,
  ruled: none,
  rows: none,
};
