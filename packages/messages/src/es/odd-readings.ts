import type { oddReadings as english } from '../en/odd-readings';
import { translated } from '../translated';

export const oddReadings = translated<typeof english>()({
  'colder-than-around': '{read} es menos que lo que rodea a la pieza.',
  'far-from-course': '{read} está lejos de {last}, unos {ago} antes.',
  'falls-too-fast': '{read} es una bajada más rápida de lo que puede el centro de la pieza: {last}, unos {ago} antes.',
  'rises-too-fast': '{read} es una subida más rápida de lo que puede el centro de la pieza: {last}, unos {ago} antes.',
});
