import type { limitPurposes as english } from '../en/limit-purposes';
import { translated } from '../translated';

export const limitPurposes = translated<typeof english>()({
  'purpose-receiving': 'Recepción',
  'purpose-cold-holding': 'Conservación en frío',
  'purpose-frozen-holding': 'Conservación en congelación',
  'purpose-hot-holding': 'Conservación en caliente',
  'purpose-cooking': 'Cocción',
  'purpose-reheating': 'Recalentamiento',
  'purpose-come-up': 'Calentamiento',
  'purpose-humidity': 'Humedad',
  'purpose-cooling': 'Enfriamiento',
  'purpose-curing': 'Curado',
  'purpose-additive': 'Aditivos',
  'purpose-composition': 'Composición',
  'purpose-fermenting': 'Fermentación',
  'purpose-drying': 'Secado',
  'purpose-keeping': 'Conservación',
  'purpose-instruments': 'Instrumentos',
});
