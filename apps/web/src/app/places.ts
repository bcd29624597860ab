/** The places of the shop, as the index tabs of the book; `also` are pages elsewhere that belong to one. */
export const places: { to: string; name: string; also?: string[] }[] = [
  { to: '/', name: 'Today' },
  { to: '/lots', name: 'Lots', also: ['/deviations', '/reviews'] },
  { to: '/receiving', name: 'Receiving' },
  { to: '/products', name: 'Products', also: ['/plans'] },
  { to: '/shipping', name: 'Shipping' },
  { to: '/trace', name: 'Trace' },
  { to: '/calculators', name: 'Calculators' },
  { to: '/papers', name: 'Papers' },
  { to: '/shop', name: 'Shop' },
];
