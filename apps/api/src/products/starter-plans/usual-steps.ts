import type { SayStarter, StarterStep } from './starter-plan';

/** Steps and hazards (9 CFR 417.2(a)) that every starter plan has. */

export const receivingMeat = (say: SayStarter, killedAt: string): StarterStep => ({
  key: 'receiving meat',
  name: say('receiving-meat'),
  hazards: [
    {
      kind: 'biological',
      what: say('salmonella-listeria-monocytogenes-and-other'),
      likely: true,
      because: say('they-are-found-in-raw'),
      control: say('killed-later-at-the-control', { killedAt }),
    },
    {
      kind: 'biological',
      what: say('growth-of-pathogens-on-the'),
      likely: false,
      because: say('every-delivery-is-judged-by'),
      control: say('temperature-at-receipt-kept-with'),
    },
    {
      kind: 'chemical',
      what: say('residues-of-drugs-and-pesticides'),
      likely: false,
      because: say('the-meat-comes-from-inspected'),
      control: say('approved-suppliers'),
    },
    {
      kind: 'physical',
      what: say('bone-splinters-metal-plastic-from'),
      likely: false,
      because: say('seldom-found-and-looked-for'),
      control: say('looking-over-at-receipt-and'),
    },
  ],
});

export const receivingDryGoods = (say: SayStarter): StarterStep => ({
  key: 'receiving dry goods',
  name: say('receiving-ingredients-and-packaging'),
  hazards: [
    {
      kind: 'chemical',
      what: say('allergens-that-the-label-does'),
      likely: false,
      because: say('each-items-allergens-are-recorded'),
      control: say('allergens-of-the-item-label'),
    },
    {
      kind: 'chemical',
      what: say('packaging-not-meant-for-food'),
      likely: false,
      because: say('a-letter-of-guarantee-is'),
      control: say('letters-of-guarantee'),
    },
  ],
});

export const coldStorageOfMeat = (say: SayStarter): StarterStep => ({
  key: 'cold storage of meat',
  name: say('cold-storage-of-meat'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-pathogens-in-storage'),
      likely: false,
      because: say('the-walk-in-is-kept'),
      control: say('daily-temperature-of-the-walk'),
    },
  ],
});

export const trimming = (say: SayStarter): StarterStep => ({
  key: 'trimming',
  name: say('trimming-and-weighing-the-meat'),
  hazards: [
    {
      kind: 'biological',
      what: say('spread-of-pathogens-from-one'),
      likely: false,
      because: say('surfaces-and-knives-are-cleaned'),
      control: say('sanitation-procedures-9-cfr-416'),
    },
    {
      kind: 'physical',
      what: say('bone-splinters-broken-knife-tips'),
      likely: false,
      because: say('knives-are-looked-at-before'),
      control: say('looking-over'),
    },
  ],
});

export const packing = (say: SayStarter): StarterStep => ({
  key: 'packing',
  name: say('packing-and-labelling'),
  hazards: [
    {
      kind: 'biological',
      what: say('listeria-monocytogenes-from-surfaces-and'),
      likely: false,
      because: say('sanitation-and-surface-tests-under'),
      control: say('sanitation-procedures-and-listeria-programme'),
    },
    {
      kind: 'chemical',
      what: say('allergens-that-the-label-does'),
      likely: false,
      because: say('the-label-is-compared-with'),
      control: say('label-check'),
    },
    {
      kind: 'physical',
      what: say('pieces-of-the-packing-machine'),
      likely: false,
      because: say('the-machine-is-looked-over'),
      control: say('pre-operational-check'),
    },
  ],
});

export const shipping = (say: SayStarter): StarterStep => ({
  key: 'shipping',
  name: say('shipping'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-pathogens-on-the-way'),
      likely: false,
      because: say('product-leaves-cold-in-a'),
      control: say('temperature-of-the-vehicle-before'),
    },
  ],
});
