import type { onScale as english } from '../en/on-scale';
import { translated } from '../translated';

export const onScale = translated<typeof english>()({
  'nearest-on-scale':
    'La fórmula pide {aimed}, que en esta báscula no está con seguridad dentro del límite: {nearest} es lo más cercano que lo está.',
  'nothing-on-scale': 'En pasos de {step} nada de lo que marca la báscula está con seguridad dentro del límite. Use una báscula más fina.',
  'scale-step-unusable': 'El paso de la báscula no se puede usar.',
});
