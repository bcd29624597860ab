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
import type { StarterPlan } from './starter-plan';
import { fermentationBegins } from './fermentation-begins';
import { caution, labelCheck } from './usual-points';

const acidInTime: DegreeHoursLimit = { kind: 'degreeHours', ...degreeHoursFahrenheit };

/** A labelling standard, no proof of safety: it says what may be called dry sausage. */
const dryByLabel = figureOf('mpr-dry');

/** Below the least at which Staphylococcus aureus grows; of the pathogens in the table it needs the least water. */
const leastForGrowth = figureOf('growth-aw-aureus');
const tooDryToGrow: RangeLimit = {
  kind: 'range',
  measured: 'aw',
  max: leastForGrowth.min,
  signs: { max: '<' },
  source: leastForGrowth.source,
};

export const curedDried: StarterPlan = {
  process: 'cured dried',
  title: 'Fermented and dried sausage',
  about:
    'Chopped pork, cured with nitrite, stuffed, fermented with a starter culture and dried. Never heated, shelf stable. For an inspected establishment; not for poultry, and not for semi-dry sausage, which is cooked or kept cold.',
  intendedUse: 'Ready to eat for the general public, sliced and eaten without cooking; kept dry and cool.',
  steps: driedSteps,
  controlPoints: [
    curingSalt,
    fermentationBegins,
    {
      key: 'fermentation',
      at: 'fermenting',
      name: 'Fermentation',
      kind: 'critical',
      hazard: 'Toxin of Staphylococcus aureus, and pathogens that outlive a slow fermentation.',
      takenAs: 'curve',
      limits: [acidInTime],
      follows: 'fermentation begins',
      probes: ['chamber', 'sausage'],
      plausible: { '°F': [4500, 11500], '°C': [700, 4600] },
      frequency: { everyMinutes: 120 },
      monitoring: {
        what: 'Temperature of the chamber at its warmest place, and pH in the middle of a sausage.',
        how: 'Logger of the chamber, written down or sent by itself. pH meter set with two buffers, in a slurry of one part meat and one part water or with a spear, in two sausages; the higher counts.',
        howOften:
          'Chamber: at least every two hours from the moment the sausages hang until pH 5.3 is shown. pH: when they hang, after a day, then at least every six hours (common practice, no source).',
        who: 'The sausage maker.',
      },
      correctiveAction:
        'Hold the lot. Once too many degree-hours have added up before pH 5.3, the sausages are tested for toxin under the eyes of a process authority, or condemned; drying or cooking does not destroy it. Find the cause (culture, sugar, chamber, salt), try the culture in a small batch, and write what keeps unsafe product from leaving.',
      verification:
        'Logger compared with a checked thermometer, pH meter with its buffers before each lot. Records are reviewed before shipment.',
    },
    {
      key: 'water activity',
      at: 'drying',
      name: 'Water activity',
      kind: 'critical',
      hazard: 'Pathogens that live on, or grow later, in a sausage that is not dry enough.',
      takenAs: 'value',
      limits: [tooDryToGrow],
      probes: [],
      frequency: { timesInALot: 3 },
      monitoring: {
        what: 'Water activity of the core of the thickest sausage.',
        how: 'Water activity meter checked with a salt standard, or a laboratory; the sample is cut from the core and closed at once.',
        howOften: 'Every lot, in three sausages, when drying is thought to be finished (common practice, no source).',
        who: 'The sausage maker.',
      },
      correctiveAction:
        'Hang the lot again and measure after some days. Nothing is packed before the limit is met. If it does not get there, hold the lot: a process authority judges it, or it is condemned. Find the cause (humidity, air, a dry rim) and follow the next lot closely.',
      verification: 'Meter checked with its standards. A laboratory measures one lot in ten (common practice, no source).',
    },
    {
      key: 'moisture to protein',
      at: 'drying',
      name: 'Moisture to protein',
      kind: 'prerequisite',
      hazard: 'A product that may not be called dry sausage.',
      takenAs: 'value',
      limits: [dryByLabel],
      probes: [],
      frequency: { timesInALot: 1 },
      monitoring: {
        what: 'Moisture and protein of the finished sausage, analysed; the one divided by the other.',
        how: 'A laboratory’s letter. It is a labelling standard and no proof of safety: water activity is.',
        howOften: 'Every lot until the process is known, then as the label approval asks.',
        who: 'The sausage maker sends the sample.',
      },
      correctiveAction: 'Dry on and analyse again, or label it as what it is. Write what becomes of the lot.',
      verification: 'The letter is kept with the record. Records are reviewed before shipment.',
    },
    labelCheck,
  ],
  notes: `${caution} Fermentation and drying have to be validated together for your recipe, casing and chamber: at least 5 log of Salmonella and of E. coli O157:H7 and 3 log of Listeria monocytogenes (FSIS guideline on fermented, salt-cured and dried products); degree-hours, moisture to protein and water activity are no proof of it. Trichinae in pork are a matter of the hazard analysis: see “Receiving meat”. Degree-hours count the chamber, in °F, above 60 °F, until a reading shows pH 5.3. A formula with nitrate, erythorbate or ascorbate needs a control point for it. Curing salts are toxic in excess: keep them locked, coloured and marked with their content.`,
};

/** A figure of the set for inspected establishments, as printed there, with its source. */
function figureOf(rowId: string): FigureLimit {
  const set = limitSetById(usualSetOf['US, inspected establishment']);
  const limit = set?.rows.find(({ id }) => id === rowId)?.limit;
  if (!isOfKind(limit, 'figure')) throw new Error(`The set for inspected establishments prints no figure as ${rowId}`);
  return limit;
}
