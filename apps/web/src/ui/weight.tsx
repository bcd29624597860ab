import { massIn } from '@larderbook/haccp';
import { useFigures } from './voice';

/** In the shop's unit: "22.68 kg", "50 lb", "408.2 g". */
export function Weight({ grams, units }: { grams: number; units: 'US' | 'metric' }) {
  return useFigures().quantity(massIn(units, grams));
}
