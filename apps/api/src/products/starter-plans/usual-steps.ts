import type { StarterStep } from './starter-plan';

/** Steps that every starter plan has, with the hazards found at them (9 CFR 417.2(a)). */

export const receivingMeat = (killedAt: string): StarterStep => ({
  key: 'receiving meat',
  name: 'Receiving meat',
  hazards: [
    {
      kind: 'biological',
      what: 'Salmonella, Listeria monocytogenes and other pathogens in raw meat',
      likely: true,
      because: 'They are found in raw meat from time to time, whoever the supplier is.',
      control: `Killed later, at the control point “${killedAt}”.`,
    },
    {
      kind: 'biological',
      what: 'Growth of pathogens on the way here',
      likely: false,
      because: 'Every delivery is judged by its temperature at the door; one that misses is refused, or held under a deviation.',
      control: 'Temperature at receipt, kept with the delivery.',
    },
    {
      kind: 'chemical',
      what: 'Residues of drugs and pesticides',
      likely: false,
      because: 'The meat comes from inspected establishments; their numbers are kept with each delivery.',
      control: 'Approved suppliers.',
    },
    {
      kind: 'physical',
      what: 'Bone splinters, metal, plastic from the supplier',
      likely: false,
      because: 'Seldom found, and looked for while the meat is trimmed.',
      control: 'Looking over at receipt and at trimming.',
    },
  ],
});

export const receivingDryGoods: StarterStep = {
  key: 'receiving dry goods',
  name: 'Receiving ingredients and packaging',
  hazards: [
    {
      kind: 'chemical',
      what: 'Allergens that the label does not name',
      likely: false,
      because: 'Each item’s allergens are recorded when it is first bought, and the label is checked before packing.',
      control: 'Allergens of the item; label check at packing.',
    },
    {
      kind: 'chemical',
      what: 'Packaging not meant for food',
      likely: false,
      because: 'A letter of guarantee is on file for each kind of packaging.',
      control: 'Letters of guarantee.',
    },
  ],
};

export const coldStorageOfMeat: StarterStep = {
  key: 'cold storage of meat',
  name: 'Cold storage of meat',
  hazards: [
    {
      kind: 'biological',
      what: 'Growth of pathogens in storage',
      likely: false,
      because: 'The walk-in is kept at or below 40 °F (4.4 °C) and looked at every working day.',
      control: 'Daily temperature of the walk-in, under the sanitation procedures.',
    },
  ],
};

export const trimming: StarterStep = {
  key: 'trimming',
  name: 'Trimming and weighing the meat',
  hazards: [
    {
      kind: 'biological',
      what: 'Spread of pathogens from one piece to another',
      likely: false,
      because: 'Surfaces and knives are cleaned before the work and during it; the meat is out of the cold for less than an hour.',
      control: 'Sanitation procedures (9 CFR 416).',
    },
    {
      kind: 'physical',
      what: 'Bone splinters, broken knife tips',
      likely: false,
      because: 'Knives are looked at before and after; splinters are removed with the trim.',
      control: 'Looking over.',
    },
  ],
};

export const packing: StarterStep = {
  key: 'packing',
  name: 'Packing and labelling',
  hazards: [
    {
      kind: 'biological',
      what: 'Listeria monocytogenes from surfaces and hands after cooking',
      likely: false,
      because:
        'Sanitation and surface tests under the Listeria programme of the establishment (9 CFR 430.4) prevent it. Without such a programme, treat it as likely.',
      control: 'Sanitation procedures and Listeria programme.',
    },
    {
      kind: 'chemical',
      what: 'Allergens that the label does not name',
      likely: false,
      because: 'The label is compared with the formula before every run.',
      control: 'Label check.',
    },
    {
      kind: 'physical',
      what: 'Pieces of the packing machine',
      likely: false,
      because: 'The machine is looked over before and after each run.',
      control: 'Pre-operational check.',
    },
  ],
};

export const shipping: StarterStep = {
  key: 'shipping',
  name: 'Shipping',
  hazards: [
    {
      kind: 'biological',
      what: 'Growth of pathogens on the way to the customer',
      likely: false,
      because: 'Product leaves cold, in a cooled vehicle or with ice, and the way is short.',
      control: 'Temperature of the vehicle before loading.',
    },
  ],
};
