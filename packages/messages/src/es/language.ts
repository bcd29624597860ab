import type { language as english } from '../en/language';
import { translated } from '../translated';

export const language = translated<typeof english>()({
  language: 'Idioma',
  'for-you': 'Su idioma',
  'on-every-device': 'En cada dispositivo donde inicie sesión y en lo que imprima.',
  'as-the-device': 'El del dispositivo',
});
