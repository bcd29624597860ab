import { onCommonScale } from '../quantity/convert-degrees';

/** 1 °C on the common scale. */
export const DEGREE = onCommonScale({ hundredths: 100, unit: '°C' });
