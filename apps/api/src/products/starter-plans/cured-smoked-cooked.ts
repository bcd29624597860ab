import { comeUpWithinSixHours, cookedMeat65Log, coolingUncured, erythorbateComminuted } from '@larderbook/haccp';
import { curingSalt } from './curing-points';
import { grinding, stuffing, weighingCuringSalt } from './curing-steps';
import type { SayStarter, StarterPlan, StarterPoint, StarterStep } from './starter-plan';
import { chiller, coldStorage, labelCheck, smokehouse, thinSausage } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

/** Half an hour between readings by hand: common practice, no source. */
const readByHand = 30 * 60;

export const curedSmokedCooked = (say: SayStarter): StarterPlan => ({
  process: 'cured smoked cooked',
  title: say('cured-smoked-and-cooked-sausage'),
  about: say('chopped-pork-or-beef-cured'),
  intendedUse: say('ready-to-eat-for-the-general-public'),
  steps: [
    receivingMeat(say, say('smoking-and-cooking')),
    receivingDryGoods(say),
    coldStorageOfMeat(say),
    trimming(say),
    weighingCuringSalt(say, say('besides-nitrite-cold')),
    grinding(say),
    stuffing(say),
    cookingStep(say),
    chillingStep(say),
    packing(say),
    coldStorageStep(say),
    shipping(say),
  ],
  controlPoints: [
    curingSalt(say),
    acceleratorPoint(say),
    cookingPoint(say),
    chillingPoint(say),
    labelCheck(say),
    coldStorage(say, 'prerequisite'),
  ],
  notes: say('notes-cured-smoked-cooked', { caution: say('caution') }),
});

const cookingStep = (say: SayStarter): StarterStep => ({
  key: 'cooking',
  name: say('smoking-and-cooking'),
  hazards: [
    {
      kind: 'biological',
      what: say('survival-of-salmonella-and-other'),
      likely: true,
      because: say('the-core-is-the-last'),
      control: say('by-smoking-and-cooking'),
    },
    {
      kind: 'biological',
      what: say('toxin-of-staphylococcus-aureus-formed-while-the'),
      likely: true,
      because: say('smoking-holds-the-core-for'),
      control: say('come-up-time-at-smoking'),
    },
  ],
});

const chillingStep = (say: SayStarter): StarterStep => ({
  key: 'chilling',
  name: say('chilling'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-clostridium-perfringens-and-clostridium'),
      likely: true,
      because: say('spores-survive-every-cooking-temperature'),
      control: say('by-chilling'),
    },
  ],
});

const coldStorageStep = (say: SayStarter): StarterStep => ({
  key: 'cold storage',
  name: say('cold-storage-of-finished-product'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-listeria-monocytogenes'),
      likely: false,
      because: say('product-is-kept-at-or'),
      control: say('by-cold-storage'),
    },
  ],
});

const acceleratorPoint = (say: SayStarter): StarterPoint => ({
  key: 'accelerator',
  at: 'curing salt',
  name: say('cure-accelerator-erythorbate'),
  kind: 'prerequisite',
  hazard: say('more-erythorbate-or-ascorbate-than'),
  takenAs: 'weighings',
  limits: [erythorbateComminuted],
  probes: [],
  monitoring: {
    what: say('weight-of-the-erythorbate-against'),
    how: say('the-same-scale-as-for'),
    howOften: say('every-lot'),
    who: say('the-person-weighing-the-ingredients'),
  },
  correctiveAction: say('do-not-mix-hold-the'),
  verification: say('records-are-reviewed-before-shipment'),
});

const cookingPoint = (say: SayStarter): StarterPoint => ({
  key: 'cooking',
  at: 'cooking',
  name: say('smoking-and-cooking'),
  kind: 'critical',
  hazard: say('pathogens-that-survive-or-form-toxin'),
  takenAs: 'curve',
  limits: [comeUpWithinSixHours, { ...cookedMeat65Log, longestGapSeconds: readByHand }],
  probes: ['core'],
  surroundings: smokehouse(say),
  piece: thinSausage,
  plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
  frequency: { everyMinutes: 60 },
  monitoring: {
    what: say('temperature-in-the-core-of-the-thickest'),
    how: say('probe-in-the-middle-of-the'),
    howOften: say('when-the-product-goes-in'),
    who: say('the-smokehouse-operator'),
  },
  correctiveAction: say('keep-on-cooking-until-a'),
  verification: say('probes-checked-in-ice-water-casings'),
});

const chillingPoint = (say: SayStarter): StarterPoint => ({
  key: 'chilling',
  at: 'chilling',
  name: say('chilling'),
  kind: 'critical',
  hazard: say('growth-of-clostridium-perfringens-and-clostridium-botulinum-while'),
  takenAs: 'curve',
  limits: [coolingUncured],
  follows: 'cooking',
  probes: ['core'],
  surroundings: chiller(say),
  piece: thinSausage,
  plausible: { '°F': [2800, 20000], '°C': [-300, 9500] },
  frequency: { everyMinutes: 60 },
  monitoring: {
    what: say('temperature-in-the-core-of-the-warmest'),
    how: say('probe-in-the-middle-of-the-link'),
    howOften: say('every-quarter-of-an-hour-down'),
    who: say('the-operator-at-the-chiller'),
  },
  correctiveAction: say('spread-the-product-and-bring'),
  verification: say('probes-checked-in-ice-water-records'),
});
