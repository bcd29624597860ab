import type { limitsCaution as english } from '../en/limits-caution';
import { translated } from '../translated';

export const limitsCaution = translated<typeof english>()({
  'caution-limits':
    'Un límite publicado es una referencia. Su plan debe validarse; deciden las normas locales, el inspector y una autoridad de procesos con licencia.',
});
