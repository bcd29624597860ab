export type SetUp = {
  items: number;
  suppliers: number;
  instruments: number;
  products: number;
  /** Products whose formula is written and whose plan is adopted. */
  ready: number;
  deliveries: number;
};
export type FirstThing = { to: string; what: What; isDone: (setUp: SetUp) => boolean };

/** Selects the message that says what to do, and the one that says why. */
type What = 'items' | 'suppliers' | 'instruments' | 'product' | 'plan' | 'delivery' | 'lot';

const firstThings: FirstThing[] = [
  {
    to: '/receiving/items',
    what: 'items',
    isDone: ({ items }) => items > 0,
  },
  {
    to: '/receiving/suppliers',
    what: 'suppliers',
    isDone: ({ suppliers }) => suppliers > 0,
  },
  {
    to: '/shop/instruments',
    what: 'instruments',
    isDone: ({ instruments }) => instruments > 0,
  },
  {
    to: '/products',
    what: 'product',
    isDone: ({ products }) => products > 0,
  },
  {
    to: '/products',
    what: 'plan',
    isDone: ({ ready }) => ready > 0,
  },
  {
    to: '/receiving/new',
    what: 'delivery',
    isDone: ({ deliveries }) => deliveries > 0,
  },
  {
    to: '/lots/new',
    what: 'lot',
    isDone: () => false,
  },
];

/** The last thing is the first lot. */
export const nextThree = (setUp: SetUp): FirstThing[] => firstThings.filter(({ isDone }) => !isDone(setUp)).slice(0, 3);
