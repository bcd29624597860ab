import { comeUpWithinSixHours, cookedMeat65Log, coolingUncured, erythorbateComminuted } from '@larderbook/haccp';
import { curingSalt } from './curing-points';
import { grinding, stuffing, weighingCuringSalt } from './curing-steps';
import type { StarterPlan } from './starter-plan';
import { caution, chiller, coldStorage, labelCheck, smokehouse, thinSausage } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

/** Half an hour between two readings by hand while a temperature is held: common practice, no source. */
const readByHand = 30 * 60;

export const curedSmokedCooked: StarterPlan = {
  process: 'cured smoked cooked',
  title: 'Cured, smoked and cooked sausage',
  about:
    'Chopped pork or beef, cured with nitrite, stuffed into casings, smoked and cooked through, chilled and packed. Fully cooked, not shelf stable. Not for poultry, which takes 7-log cooking.',
  intendedUse: 'Ready to eat for the general public, cold or reheated; kept refrigerated.',
  steps: [
    receivingMeat('Smoking and cooking'),
    receivingDryGoods,
    coldStorageOfMeat,
    trimming,
    weighingCuringSalt('the cooling and cold storage limits do not lean on nitrite'),
    grinding,
    stuffing,
    {
      key: 'cooking',
      name: 'Smoking and cooking',
      hazards: [
        {
          kind: 'biological',
          what: 'Survival of Salmonella and other pathogens',
          likely: true,
          because: 'The core is the last to get hot, and smoking alone does not kill.',
          control: 'Smoking and cooking.',
        },
        {
          kind: 'biological',
          what: 'Toxin of Staphylococcus aureus, formed while the product warms slowly',
          likely: true,
          because: 'Smoking holds the core for hours at temperatures at which it grows; cooking does not destroy its toxin.',
          control: 'Come-up time at “Smoking and cooking”.',
        },
      ],
    },
    {
      key: 'chilling',
      name: 'Chilling',
      hazards: [
        {
          kind: 'biological',
          what: 'Growth of Clostridium perfringens and Clostridium botulinum from spores that survive cooking',
          likely: true,
          because: 'Spores survive every cooking temperature used here and grow while the product is warm.',
          control: 'Chilling.',
        },
      ],
    },
    packing,
    {
      key: 'cold storage',
      name: 'Cold storage of finished product',
      hazards: [
        {
          kind: 'biological',
          what: 'Growth of Listeria monocytogenes',
          likely: false,
          because: 'Product is kept at or below 41 °F (5 °C), measured when it is put away and every working day.',
          control: 'Cold storage.',
        },
      ],
    },
    shipping,
  ],
  controlPoints: [
    curingSalt,
    {
      key: 'accelerator',
      at: 'curing salt',
      name: 'Cure accelerator (erythorbate)',
      kind: 'prerequisite',
      hazard: 'More erythorbate or ascorbate than is allowed.',
      takenAs: 'weighings',
      limits: [erythorbateComminuted],
      probes: [],
      monitoring: {
        what: 'Weight of the erythorbate against the trimmed weight of the meat.',
        how: 'The same scale as for the curing salt.',
        howOften: 'Every lot.',
        who: 'The person weighing the ingredients.',
      },
      correctiveAction:
        'Do not mix. Hold the lot, weigh again, and bring in more trimmed meat until the concentration is within its limit.',
      verification: 'Records are reviewed before shipment. Take this control point out if the formula has no erythorbate or ascorbate.',
    },
    {
      key: 'cooking',
      at: 'cooking',
      name: 'Smoking and cooking',
      kind: 'critical',
      hazard: 'Pathogens that survive, or form toxin because the product warms too slowly.',
      takenAs: 'curve',
      limits: [comeUpWithinSixHours, { ...cookedMeat65Log, longestGapSeconds: readByHand }],
      probes: ['core'],
      surroundings: smokehouse,
      piece: thinSausage,
      plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
      frequency: { everyMinutes: 60 },
      monitoring: {
        what: 'Temperature in the core of the thickest link, at the coldest place of the rack.',
        how: 'Probe in the middle of the link, read without opening the door for longer than needed; never an average, the lowest counts.',
        howOften:
          'When the product goes in, then at least every hour until 130 °F (54.4 °C), then at least every half hour until a row of the table is met (common practice, no source).',
        who: 'The smokehouse operator.',
      },
      correctiveAction:
        'Keep on cooking until a row of the table is met; if the smokehouse has failed, move the product at once to one that works. If the come-up took too long, hold the lot: cooking does not destroy toxin, so a process authority has to judge it, or it is condemned. Find the cause, repair it, watch the next lot with a reading every quarter of an hour, and write what keeps unsafe product from leaving.',
      verification:
        'Probes checked in ice water. Casings that hold moisture (natural, collagen, cellulose, fibrous, plastic) need no humidity control; skinless or dry-heat product does (FSIS cooking guideline, pp. 26 and 31-33).',
    },
    {
      key: 'chilling',
      at: 'chilling',
      name: 'Chilling',
      kind: 'critical',
      hazard: 'Growth of Clostridium perfringens and Clostridium botulinum while the product cools.',
      takenAs: 'curve',
      limits: [coolingUncured],
      follows: 'cooking',
      probes: ['core'],
      surroundings: chiller,
      piece: thinSausage,
      plausible: { '°F': [2800, 20000], '°C': [-300, 9500] },
      frequency: { everyMinutes: 60 },
      monitoring: {
        what: 'Temperature in the core of the warmest link of the rack.',
        how: 'Probe in the middle of the link, left in place from the shower to the chiller.',
        howOften:
          'Every quarter of an hour down to 80 °F (26.7 °C), then at least every hour to 40 °F (4.4 °C) (common practice, no source).',
        who: 'The operator at the chiller.',
      },
      correctiveAction:
        'Spread the product and bring it to a colder place at once; go on reading. A missed stage holds the lot: a process authority judges the growth of Clostridium perfringens (at most 1 log), or the lot is condemned. Find the cause, bring the empty chiller to its temperature, follow the next lot closely, and write what keeps unsafe product from leaving.',
      verification: 'Probes checked in ice water. Records are reviewed before shipment.',
    },
    labelCheck,
    coldStorage('prerequisite'),
  ],
  notes: `${caution} Curing salts are toxic in excess: keep them locked, coloured and marked with their content. A slower chill for cured product (130 to 80 °F in 5 h, 80 to 45 °F in 10 h) is among the published limits; it asks for at least 100 ppm ingoing nitrite, its later edition is said to ask for 250 ppm erythorbate too, and its figures are not confirmed in the original: choose it only with your own support.`,
};
