import type { Surroundings } from '@larderbook/contracts';
import { coldHolding, type AttestationLimit, type Piece } from '@larderbook/haccp';
import type { StarterPoint } from './starter-plan';

/** Control points that every starter plan has. */

/** To be set to the shop's own habit: common practice, no source. No limit is judged by it. */
export const blastChiller: Surroundings = { name: 'Air of the blast chiller', setPoint: { value: 34, unit: '°F' } };
export const chiller: Surroundings = { name: 'Air of the chiller', setPoint: { value: 34, unit: '°F' } };
/** Its programme climbs step by step, so it is read rather than assumed. */
export const smokehouse: Surroundings = { name: 'Air of the smokehouse' };
export const oven: Surroundings = { name: 'Air of the oven' };

/** The thinnest of each that a shop usually makes, to be set to its own: common practice, no source. */
export const thinSausage: Piece = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } };
export const thinRoast: Piece = { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } };
export const shallowPan: Piece = { shape: 'slab', smallest: { value: 2, unit: 'in' } };

const rightLabel: AttestationLimit = {
  kind: 'attestation',
  statement:
    'The label is the one of this product: its name, every ingredient in descending order, every allergen the formula holds, net weight, use-by date, establishment number and how to keep it.',
  source: {
    citation: '9 CFR 317.2(c); nine major food allergens of the Food Allergen Labeling and Consumer Protection Act and the FASTER Act',
    edition: 'sesame since 1 January 2023',
    confirmed: true,
  },
};

export const labelCheck: StarterPoint = {
  key: 'label',
  at: 'packing',
  name: 'Label and allergens',
  kind: 'prerequisite',
  hazard: 'Allergens that the label does not name.',
  takenAs: 'attestation',
  limits: [rightLabel],
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: 'The label on the machine and on the first package, beside the formula.',
    how: 'Read the label line by line against the formula of the lot; write what was compared.',
    howOften: 'At the start of every run, and whenever a roll of labels is changed.',
    who: 'The person packing.',
  },
  correctiveAction:
    'Stop the run and hold every package since the last good check. Take the wrong labels away and count them. Find how they came onto the machine and keep it from happening again. Relabel under the eyes of a second person, or condemn.',
  verification: 'The reviewer compares a kept label with the formula before the lot is cleared.',
};

export const coldStorage = (kind: StarterPoint['kind']): StarterPoint => ({
  key: 'cold storage',
  at: 'cold storage',
  name: 'Cold storage',
  kind,
  hazard: 'Growth of Listeria monocytogenes and of what spores survived, while the product waits.',
  takenAs: 'value',
  limits: [coldHolding],
  probes: [],
  plausible: { '°F': [2000, 6000], '°C': [-700, 1600] },
  frequency: { timesInALot: 1 },
  monitoring: {
    what: 'Temperature of the product, or of a package of water standing among the packages.',
    how: 'Thermometer held against the product between two packages until it is steady.',
    howOften: 'When the lot is put away, and once every working day while it waits (common practice, no source).',
    who: 'The operator on duty.',
  },
  correctiveAction:
    'Measure a second package. Move the lot to a cold room that works and hold it. Find since when it was too warm: product above the limit for longer than you can support is condemned. Have the cooling repaired and the next day’s readings taken twice.',
  verification: 'Thermometer checked in ice water, 32 °F (0 °C), as often as its card says. Records are reviewed before shipment.',
});

/** What is written under every plan to start from. */
export const caution =
  'A plan to start from, not a validated one. Check every figure in its source, adapt steps, hazards and limits to what you really do, and keep your own support on file (9 CFR 417.4(a)(1)): this book keeps records and computes; it does not validate a process. Local codes, your inspector and a licensed process authority decide. Allow for the error of the thermometer in the limit (FSIS cooking guideline, p. 20).';
