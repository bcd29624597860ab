/** The places of the shop, as the index tabs of the book. One that has no page yet is not shown. */
export const places = [
  { to: '/', name: 'Today' },
  { to: '/lots', name: 'Lots' },
  { to: '/receiving', name: 'Receiving' },
  { to: '/products', name: 'Products' },
  { to: '/shipping', name: 'Shipping' },
  { to: '/trace', name: 'Trace' },
  { to: '/figures', name: 'Figures' },
  { to: '/papers', name: 'Papers' },
  { to: '/shop', name: 'Shop' },
];
