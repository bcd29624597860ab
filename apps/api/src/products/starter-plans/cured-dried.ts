import {
  degreeHoursFahrenheit,
  isOfKind,
  limitSetById,
  usualSetOf,
  type DegreeHoursLimit,
  type FigureLimit,
  type RangeLimit,
} from '@larderbook/haccp';
import { curingSalt } from './curing-points';
import { driedSteps } from './dried-steps';
import type { SayStarter, StarterPlan, StarterPoint } from './starter-plan';
import { fermentationBegins } from './fermentation-begins';
import { labelCheck } from './usual-points';

const acidInTime: DegreeHoursLimit = { kind: 'degreeHours', ...degreeHoursFahrenheit };

/** This labelling standard is no proof of safety. */
const dryByLabel = figureOf('mpr-dry');

/** Of the pathogens in the table, Staphylococcus aureus grows at the least water activity. */
const leastForGrowth = figureOf('growth-aw-aureus');
const tooDryToGrow: RangeLimit = {
  kind: 'range',
  measured: 'aw',
  max: leastForGrowth.min,
  signs: { max: '<' },
  source: leastForGrowth.source,
};

export const curedDried = (say: SayStarter): StarterPlan => ({
  process: 'cured dried',
  title: say('fermented-and-dried-sausage'),
  about: say('chopped-pork-cured-with-nitrite'),
  intendedUse: say('ready-to-eat-for-the-general'),
  steps: driedSteps(say),
  controlPoints: [
    curingSalt(say),
    fermentationBegins(say),
    fermentationPoint(say),
    waterActivityPoint(say),
    moistureToProteinPoint(say),
    labelCheck(say),
  ],
  notes: say('notes-cured-dried', { caution: say('caution') }),
});

/** The figure is printed in the set for inspected establishments. */
function figureOf(rowId: string): FigureLimit {
  const set = limitSetById(usualSetOf['US, inspected establishment']);
  const limit = set?.rows.find(({ id }) => id === rowId)?.limit;
  if (!isOfKind(limit, 'figure')) throw new Error(`The set for inspected establishments prints no figure as ${rowId}`);
  return limit;
}

const fermentationPoint = (say: SayStarter): StarterPoint => ({
  key: 'fermentation',
  at: 'fermenting',
  name: say('fermentation'),
  kind: 'critical',
  hazard: say('toxin-of-staphylococcus-aureus-and'),
  takenAs: 'curve',
  limits: [acidInTime],
  follows: 'fermentation begins',
  probes: ['chamber', 'sausage'],
  plausible: { '°F': [4500, 11500], '°C': [700, 4600] },
  frequency: { everyMinutes: 120 },
  monitoring: {
    what: say('temperature-of-the-chamber-at'),
    how: say('logger-of-the-chamber-written'),
    howOften: say('chamber-at-least-every-two'),
    who: say('the-sausage-maker'),
  },
  correctiveAction: say('hold-the-lot-once-too'),
  verification: say('logger-compared-with-a-checked'),
});

const waterActivityPoint = (say: SayStarter): StarterPoint => ({
  key: 'water activity',
  at: 'drying',
  name: say('water-activity'),
  kind: 'critical',
  hazard: say('pathogens-that-live-on-or'),
  takenAs: 'value',
  limits: [tooDryToGrow],
  probes: [],
  frequency: { timesInALot: 3 },
  monitoring: {
    what: say('water-activity-of-the-core'),
    how: say('water-activity-meter-checked-with'),
    howOften: say('every-lot-in-three-sausages'),
    who: say('the-sausage-maker'),
  },
  correctiveAction: say('hang-the-lot-again-and'),
  verification: say('meter-checked-with-its-standards'),
});

const moistureToProteinPoint = (say: SayStarter): StarterPoint => ({
  key: 'moisture to protein',
  at: 'drying',
  name: say('moisture-to-protein'),
  kind: 'prerequisite',
  hazard: say('a-product-that-may-not'),
  takenAs: 'value',
  limits: [dryByLabel],
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('moisture-and-protein-of-the'),
    how: say('a-laboratorys-letter-it-is'),
    howOften: say('every-lot-until-the-process'),
    who: say('the-sausage-maker-sends-the'),
  },
  correctiveAction: say('dry-on-and-analyse-again'),
  verification: say('the-letter-is-kept-with'),
});
