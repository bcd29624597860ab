import { measurementOf, type Measurement } from '../../limits/measurement';
import { range } from './range';
import type { RangeLimit } from './range-limit';

/** A number in another unit says nothing of the limit: 3 % is no pH. */
export const readFor = (read: { value: number; unit: string } | undefined, limit: RangeLimit): Measurement | undefined =>
  read && range.unitsRead(limit).includes(read.unit) ? measurementOf(read) : undefined;
