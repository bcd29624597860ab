import type { WordsOf } from '@larderbook/messages';

/** `also` are pages elsewhere that belong to the place. */
export const places = [
  { to: '/', name: 'today', also: [] },
  { to: '/lots', name: 'lots', also: ['/deviations', '/reviews'] },
  { to: '/receiving', name: 'receiving', also: [] },
  { to: '/products', name: 'products', also: ['/plans'] },
  { to: '/shipping', name: 'shipping', also: [] },
  { to: '/trace', name: 'trace', also: [] },
  { to: '/calculators', name: 'calculators', also: [] },
  { to: '/papers', name: 'papers', also: [] },
  { to: '/shop', name: 'shop', also: [] },
] as const satisfies { to: string; name: keyof WordsOf<'shell'>; also: string[] }[];
