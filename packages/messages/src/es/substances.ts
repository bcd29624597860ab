import type { substances as english } from '../en/substances';
import { translated } from '../translated';

export const substances = translated<typeof english>()({
  'substance-sodium-nitrite': 'nitrito de sodio',
  'substance-sodium-nitrate': 'nitrato de sodio',
  'substance-sodium-erythorbate': 'eritorbato de sodio',
  'substance-phosphate': 'fosfato',
});
