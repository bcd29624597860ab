import { onCommonScale } from '../quantity/convert-degrees';

/** One degree Celsius on the common scale. */
export const DEGREE = onCommonScale({ hundredths: 100, unit: '°C' });
