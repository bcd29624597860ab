import type { Measured } from '../kinds/range/range-limit';
import { isDegrees, type Measurement } from '../limits/measurement';
import type { Coded } from '../limits/verdict';
import { differenceOf } from '../quantity/quantities';

export const notedError = (error: Measurement, of: Exclude<Measured, 'percent'>): Coded => ({
  code: `allowed-for-${of}`,
  figures: { error: isDegrees(error) ? differenceOf(error.hundredths, error.unit, 2) : differenceOf(error.thousandths, 'ratio') },
});
