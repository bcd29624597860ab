import type { lineFaults as english } from '../en/line-faults';
import { translated } from '../translated';

export const lineFaults = translated<typeof english>()({
  'ingredient-no-name': 'Un ingrediente no tiene nombre.',
  'ingredient-listed-twice': '{name} figura dos veces.',
  'ingredient-no-percentage': '{name} no tiene porcentaje.',
  'ingredient-not-above-zero': '{name} tiene {percent}; debe ser más de 0 %.',
  'ingredient-too-much': '{name} tiene {percent} del bloque de carne; como máximo puede ser 1000 %.',
  'ingredient-too-fine': '{name} tiene {percent}; se guardan cuatro decimales como máximo.',
});
