import type { PrintedTemperature } from '../quantity/temperature';
import { exactly } from './read-cell';

/** In degrees. */
export const both = (fahrenheit: number, celsius: number): PrintedTemperature => ({
  '°F': exactly(fahrenheit, 2),
  '°C': exactly(celsius, 2),
});
