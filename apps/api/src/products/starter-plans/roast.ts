import { comeUpWithinSixHours, cookedMeat65Log, coolingUncured, type AttestationLimit } from '@larderbook/haccp';
import type { SayStarter, StarterPlan, StarterPoint, StarterStep } from './starter-plan';
import { blastChiller, coldStorage, labelCheck, oven, thinRoast } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

/** Half an hour between readings by hand: common practice, no source. */
const readByHand = 30 * 60;

const moistHeat = (say: SayStarter): AttestationLimit => ({
  kind: 'attestation',
  asks: 'humidity',
  statement: say('humidity-was-kept-while-cooking'),
  source: {
    ...cookedMeat65Log.source,
    citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, Table 1, p. 26, and pp. 31-33',
  },
});

export const roast = (say: SayStarter): StarterPlan => ({
  process: 'roast',
  title: say('roast-meat-uncured'),
  about: say('a-whole-piece-of-beef'),
  intendedUse: say('ready-to-eat-for-the'),
  steps: [
    receivingMeat(say, say('roasting')),
    receivingDryGoods(say),
    coldStorageOfMeat(say),
    trimming(say),
    seasoningStep(say),
    roastingStep(say),
    chillingStep(say),
    packing(say),
    coldStorageStep(say),
    shipping(say),
  ],
  controlPoints: [roastingPoint(say), humidityPoint(say), chillingPoint(say), labelCheck(say), coldStorage(say, 'critical')],
  notes: say('notes-roast', { caution: say('caution') }),
});

const seasoningStep = (say: SayStarter): StarterStep => ({
  key: 'seasoning',
  name: say('weighing-ingredients-and-seasoning'),
  hazards: [
    {
      kind: 'chemical',
      what: say('an-ingredient-with-an-allergen'),
      likely: false,
      because: say('ingredients-are-weighed-from-the'),
      control: say('weighings-of-the-lot'),
    },
  ],
});

const roastingStep = (say: SayStarter): StarterStep => ({
  key: 'roasting',
  name: say('roasting'),
  hazards: [
    {
      kind: 'biological',
      what: say('survival-of-salmonella-and-other'),
      likely: true,
      because: say('roasts-are-cooked-to-low'),
      control: say('roasting-and-humidity-while-roasting'),
    },
    {
      kind: 'biological',
      what: say('toxin-of-staphylococcus-aureus-formed-while'),
      likely: true,
      because: say('a-big-piece-in-a'),
      control: say('come-up-time-at-roasting'),
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
      because: say('uncured-meat-has-nothing-but'),
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
      likely: true,
      because: say('uncured-roast-meat-has-no'),
      control: say('by-cold-storage'),
    },
  ],
});

const roastingPoint = (say: SayStarter): StarterPoint => ({
  key: 'roasting',
  at: 'roasting',
  name: say('roasting'),
  kind: 'critical',
  hazard: say('pathogens-that-survive-or-form'),
  takenAs: 'curve',
  limits: [comeUpWithinSixHours, { ...cookedMeat65Log, longestGapSeconds: readByHand }],
  probes: ['core'],
  surroundings: oven(say),
  piece: thinRoast,
  plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
  frequency: { everyMinutes: 60 },
  monitoring: {
    what: say('temperature-in-the-core-of'),
    how: say('probe-in-the-middle-of'),
    howOften: say('when-the-pieces-go-in'),
    who: say('the-cook'),
  },
  correctiveAction: say('keep-on-roasting-until-a'),
  verification: say('probes-checked-in-ice-water-records'),
});

const humidityPoint = (say: SayStarter): StarterPoint => ({
  key: 'humidity',
  at: 'roasting',
  name: say('humidity-while-roasting'),
  kind: 'critical',
  hazard: say('a-dry-surface-on-which'),
  takenAs: 'attestation',
  limits: [moistHeat(say)],
  follows: 'roasting',
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('how-humidity-was-kept-and'),
    how: say('times-at-which-steam-was'),
    howOften: say('every-lot-when-roasting-ends'),
    who: say('the-cook'),
  },
  correctiveAction: say('hold-the-lot-without-humidity'),
  verification: say('the-owner-watches-one-cook'),
});

const chillingPoint = (say: SayStarter): StarterPoint => ({
  key: 'chilling',
  at: 'chilling',
  name: say('chilling'),
  kind: 'critical',
  hazard: say('growth-of-clostridium-perfringens-and-clostridium-botulinum'),
  takenAs: 'curve',
  limits: [coolingUncured],
  follows: 'roasting',
  probes: ['core'],
  surroundings: blastChiller(say),
  piece: thinRoast,
  plausible: { '°F': [2800, 20000], '°C': [-300, 9500] },
  frequency: { everyMinutes: 60 },
  monitoring: {
    what: say('temperature-in-the-core-of-the'),
    how: say('probe-left-in-the-middle-of'),
    howOften: say('every-quarter-of-an-hour-down'),
    who: say('the-operator-at-the-chiller'),
  },
  correctiveAction: say('cut-large-pieces-spread-them'),
  verification: say('probes-checked-in-ice-water-records'),
});
