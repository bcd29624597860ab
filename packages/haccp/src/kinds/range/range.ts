import type { LimitFault } from '../../limits/limit-fault-code';
import { isColder } from '../../quantity/bound';
import { DEGREES, type PrintedTemperature } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { RangeLimit } from './range-limit';

export const range: Kind<RangeLimit> = {
  takenAs: 'value',
  isOfCore: false,
  isChill: false,
  unitsRead: ({ measured }) => (measured === 'temperature' ? DEGREES : [measured === 'percent' ? '%' : measured]),
  fault,
  slips: none,
  temperatures,
  ruled: temperatures,
  rows: none,
};

function fault({ measured, min, max }: RangeLimit): LimitFault | undefined {
  const bounds = [min, max].filter((bound) => bound !== undefined);
  if (bounds.length === 0) return { code: 'neither-least-nor-most' };
  const isTemperature = measured === 'temperature';
  if (bounds.some((bound) => (typeof bound === 'object') !== isTemperature)) {
    return { code: isTemperature ? 'bound-not-in-degrees' : 'bound-in-degrees' };
  }
  if (bounds.some((bound) => typeof bound === 'number' && !Number.isSafeInteger(bound))) return { code: 'bound-unusable' };
  if (typeof min === 'number' && typeof max === 'number' && min > max) return { code: 'least-above-most' };
  if (typeof min === 'object' && typeof max === 'object' && isColder(max, min)) return { code: 'least-above-most' };
  return undefined;
}

function temperatures({ min, max }: RangeLimit): PrintedTemperature[] {
  return [min, max].filter((bound) => typeof bound === 'object');
}
