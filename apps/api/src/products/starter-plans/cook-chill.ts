import { coolingFoodCode, poultryFoodCode } from '@larderbook/haccp';
import type { SayStarter, StarterPlan, StarterPoint, StarterStep } from './starter-plan';
import { blastChiller, coldStorage, labelCheck, shallowPan } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

export const cookChill = (say: SayStarter): StarterPlan => ({
  process: 'cook-chill',
  title: say('cooked-and-chilled-dish'),
  about: say('a-stew-a-soup-or'),
  intendedUse: say('to-be-reheated-and-served'),
  steps: [
    receivingMeat(say, say('cooking')),
    receivingDryGoods(say),
    coldStorageOfMeat(say),
    trimming(say),
    ingredientsStep(say),
    cookingStep(say),
    chillingStep(say),
    packing(say),
    coldStorageStep(say),
    shipping(say),
  ],
  controlPoints: [cookingPoint(say), chillingPoint(say), labelCheck(say), coldStorage(say, 'critical')],
  notes: say('notes-cook-chill', { caution: say('caution') }),
});

const ingredientsStep = (say: SayStarter): StarterStep => ({
  key: 'ingredients',
  name: say('weighing-ingredients'),
  hazards: [
    {
      kind: 'chemical',
      what: say('an-ingredient-with-an-allergen'),
      likely: false,
      because: say('ingredients-are-weighed-from-the'),
      control: say('weighings-of-the-lot'),
    },
    {
      kind: 'physical',
      what: say('stones-string-and-splinters-in'),
      likely: false,
      because: say('they-are-washed-and-looked'),
      control: say('looking-over'),
    },
  ],
});

const cookingStep = (say: SayStarter): StarterStep => ({
  key: 'cooking',
  name: say('cooking'),
  hazards: [
    {
      kind: 'biological',
      what: say('survival-of-salmonella-listeria-monocytogenes'),
      likely: true,
      because: say('large-pieces-and-thick-sauces'),
      control: say('by-cooking'),
    },
  ],
});

const chillingStep = (say: SayStarter): StarterStep => ({
  key: 'chilling',
  name: say('chilling'),
  hazards: [
    {
      kind: 'biological',
      what: say('growth-of-clostridium-perfringens-and'),
      likely: true,
      because: say('thick-dishes-in-deep-pans'),
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
      what: say('growth-of-listeria-monocytogenes-and-of'),
      likely: true,
      because: say('the-dish-has-no-salt'),
      control: say('by-cold-storage'),
    },
  ],
});

const cookingPoint = (say: SayStarter): StarterPoint => ({
  key: 'cooking',
  at: 'cooking',
  name: say('cooking'),
  kind: 'critical',
  hazard: say('pathogens-that-survive-in-the'),
  takenAs: 'curve',
  limits: [poultryFoodCode],
  probes: ['core'],
  plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('temperature-in-the-thickest-piece'),
    how: say('stir-wait-then-hold-the'),
    howOften: say('every-kettle-from-the-time'),
    who: say('the-cook'),
  },
  correctiveAction: say('go-on-cooking-stir-and'),
  verification: say('probes-checked-in-ice-water'),
});

const chillingPoint = (say: SayStarter): StarterPoint => ({
  key: 'chilling',
  at: 'chilling',
  name: say('chilling'),
  kind: 'critical',
  hazard: say('growth-from-spores-that-survive'),
  takenAs: 'curve',
  limits: [coolingFoodCode],
  follows: 'cooking',
  probes: ['core'],
  surroundings: blastChiller(say),
  piece: shallowPan,
  plausible: { '°F': [2800, 21200], '°C': [-300, 10000] },
  frequency: { everyMinutes: 30 },
  monitoring: {
    what: say('temperature-in-the-middle-of'),
    how: say('probe-left-in-the-middle'),
    howOften: say('every-quarter-of-an-hour'),
    who: say('the-cook-or-the-kitchen'),
  },
  correctiveAction: say('while-the-first-two-hours'),
  verification: say('probes-checked-in-ice-water-records'),
});
