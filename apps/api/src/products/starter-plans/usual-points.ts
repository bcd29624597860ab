import type { Surroundings } from '@larderbook/contracts';
import { coldHolding, type AttestationLimit, type Piece } from '@larderbook/haccp';
import type { SayStarter, StarterPoint } from './starter-plan';

/** Control points that every starter plan has. */

/** Common practice, no source: the shop sets its own. No limit is judged by it. */
export const blastChiller = (say: SayStarter): Surroundings => ({
  name: say('air-of-the-blast-chiller'),
  setPoint: { value: 34, unit: '°F' },
});
export const chiller = (say: SayStarter): Surroundings => ({ name: say('air-of-the-chiller'), setPoint: { value: 34, unit: '°F' } });
/** The air is read, because the programme climbs step by step. */
export const smokehouse = (say: SayStarter): Surroundings => ({ name: say('air-of-the-smokehouse') });
export const oven = (say: SayStarter): Surroundings => ({ name: say('air-of-the-oven') });

/** The thinnest piece usually made: common practice, no source. The shop sets its own. */
export const thinSausage: Piece = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } };
export const thinRoast: Piece = { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } };
export const shallowPan: Piece = { shape: 'slab', smallest: { value: 2, unit: 'in' } };

const rightLabel = (say: SayStarter): AttestationLimit => ({
  kind: 'attestation',
  statement: say('the-label-is-the-one'),
  source: {
    citation: '9 CFR 317.2(c); nine major food allergens of the Food Allergen Labeling and Consumer Protection Act and the FASTER Act',
    edition: 'sesame since 1 January 2023',
    confirmed: true,
  },
});

export const labelCheck = (say: SayStarter): StarterPoint => ({
  key: 'label',
  at: 'packing',
  name: say('label-and-allergens'),
  kind: 'prerequisite',
  hazard: say('allergens-that-the-label-does-not'),
  takenAs: 'attestation',
  limits: [rightLabel(say)],
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('the-label-on-the-machine'),
    how: say('read-the-label-line-by'),
    howOften: say('at-the-start-of-every'),
    who: say('the-person-packing'),
  },
  correctiveAction: say('stop-the-run-and-hold'),
  verification: say('the-reviewer-compares-a-kept'),
});

export const coldStorage = (say: SayStarter, kind: StarterPoint['kind']): StarterPoint => ({
  key: 'cold storage',
  at: 'cold storage',
  name: say('cold-storage'),
  kind,
  hazard: say('growth-of-listeria-monocytogenes-and'),
  takenAs: 'value',
  limits: [coldHolding],
  probes: [],
  plausible: { '°F': [2000, 6000], '°C': [-700, 1600] },
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('temperature-of-the-product-or'),
    how: say('thermometer-held-against-the-product'),
    howOften: say('when-the-lot-is-put'),
    who: say('the-operator-on-duty'),
  },
  correctiveAction: say('measure-a-second-package-move'),
  verification: say('thermometer-checked-in-ice-water'),
});
