/** What a shop has set up so far, counted. */
export type SetUp = {
  items: number;
  suppliers: number;
  instruments: number;
  products: number;
  /** Products whose formula is written and whose plan is adopted. */
  ready: number;
  deliveries: number;
};
export type FirstThing = { to: string; name: string; why: string; isDone: (setUp: SetUp) => boolean };

const firstThings: FirstThing[] = [
  {
    to: '/receiving/items',
    name: 'Name what comes in at the door',
    why: 'The meat you buy and the curing salt you use: formulas and deliveries are made of them.',
    isDone: ({ items }) => items > 0,
  },
  {
    to: '/receiving/suppliers',
    name: 'Name your suppliers',
    why: 'Each delivery is traced back to one of them.',
    isDone: ({ suppliers }) => suppliers > 0,
  },
  {
    to: '/shop/instruments',
    name: 'Add your thermometer and scale',
    why: 'And record their first check, so that what they read can be believed.',
    isDone: ({ instruments }) => instruments > 0,
  },
  {
    to: '/products',
    name: 'Describe your first product',
    why: 'Its formula, by percent of the meat.',
    isDone: ({ products }) => products > 0,
  },
  {
    to: '/products',
    name: 'Adopt a plan for it',
    why: 'Begin from a plan with published limits, fit it to your process, sign it.',
    isDone: ({ ready }) => ready > 0,
  },
  {
    to: '/receiving/new',
    name: 'Record a delivery',
    why: 'From then on the meat is in the book.',
    isDone: ({ deliveries }) => deliveries > 0,
  },
  {
    to: '/lots/new',
    name: 'Start your first lot',
    why: 'It gets a sheet of its own, from the meat that goes in to the packages that leave.',
    isDone: () => false,
  },
];

/** The next three things a new shop sets up, in order; the last is its first lot. */
export const nextThree = (setUp: SetUp): FirstThing[] => firstThings.filter(({ isDone }) => !isDone(setUp)).slice(0, 3);
