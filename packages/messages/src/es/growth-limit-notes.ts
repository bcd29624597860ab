import type { growthLimitNotes as english } from '../en/growth-limit-notes';
import { translated } from '../translated';

export const growthLimitNotes = translated<typeof english>()({
  'growth-at-option-1':
    'Para un enfriamiento que es justo la opción 1 de enfriamiento de FSIS (130 a 80 °F en 1 h 30 min, 80 a 40 °F en 5 h) se prevén 2.1 log en carne de res o desconocida, y apenas menos de 1 log en pollo o cerdo: un límite de 1 log puede retener un enfriamiento que su límite de enfriamiento deja pasar.',
  'screen-deviations-first':
    'Úselo primero como orientación ante desviaciones: la explicación de cada enfriamiento muestra la estimación sin este límite.',
});
