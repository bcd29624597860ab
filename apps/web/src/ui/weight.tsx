import { massIn } from '@larderbook/haccp';
import { useFigures } from './voice';

/** A reckoned weight in the unit of the shop, as the reader writes figures: "22.68 kg", "50 lb", "408.2 g". */
export function Weight({ grams, units }: { grams: number; units: 'US' | 'metric' }) {
  return useFigures().quantity(massIn(units, grams));
}
