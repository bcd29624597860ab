import { comeUpWithinSixHours, cookedMeat65Log, coolingUncured, type AttestationLimit } from '@larderbook/haccp';
import type { StarterPlan } from './starter-plan';
import { blastChiller, caution, coldStorage, labelCheck, oven, thinRoast } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

/** Half an hour between two readings by hand while a temperature is held: common practice, no source. */
const readByHand = 30 * 60;

const moistHeat: AttestationLimit = {
  kind: 'attestation',
  asks: 'humidity',
  statement:
    'Humidity was kept while cooking: steam or a sealed oven for half of the cooking time and at least one hour, ending at 145 °F (62.8 °C) or more; or 90 % relative humidity for a quarter of it and at least one hour; or a sealed moisture-proof bag; or a piece of at least 10 lb (4.5 kg) in an oven of at least 250 °F (121 °C) throughout.',
  source: {
    ...cookedMeat65Log.source,
    citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, Table 1, p. 26, and pp. 31-33',
  },
};

export const roast: StarterPlan = {
  process: 'roast',
  title: 'Roast meat, uncured',
  about:
    'A whole piece of beef, pork or lamb, seasoned on its surface, roasted, chilled and packed. Fully cooked, not shelf stable. Not for poultry, and not for meat that is injected or rolled.',
  intendedUse: 'Ready to eat for the general public, mostly sliced cold; kept refrigerated.',
  steps: [
    receivingMeat('Roasting'),
    receivingDryGoods,
    coldStorageOfMeat,
    trimming,
    {
      key: 'seasoning',
      name: 'Weighing ingredients and seasoning',
      hazards: [
        {
          kind: 'chemical',
          what: 'An ingredient with an allergen that the formula does not name',
          likely: false,
          because: 'Ingredients are weighed from the formula, one by one, from recorded deliveries.',
          control: 'Weighings of the lot.',
        },
      ],
    },
    {
      key: 'roasting',
      name: 'Roasting',
      hazards: [
        {
          kind: 'biological',
          what: 'Survival of Salmonella and other pathogens',
          likely: true,
          because:
            'Roasts are cooked to low temperatures; only temperature and time together kill, and a dry surface protects what is on it.',
          control: 'Roasting, and “Humidity while roasting”.',
        },
        {
          kind: 'biological',
          what: 'Toxin of Staphylococcus aureus, formed while the piece warms slowly',
          likely: true,
          because: 'A big piece in a low oven stays for hours at temperatures at which it grows; cooking does not destroy its toxin.',
          control: 'Come-up time at “Roasting”.',
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
          because: 'Uncured meat has nothing but speed to hold them back, and big pieces cool slowly.',
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
          likely: true,
          because: 'Uncured roast meat has no hurdle but cold.',
          control: 'Cold storage.',
        },
      ],
    },
    shipping,
  ],
  controlPoints: [
    {
      key: 'roasting',
      at: 'roasting',
      name: 'Roasting',
      kind: 'critical',
      hazard: 'Pathogens that survive, or form toxin because the piece warms too slowly.',
      takenAs: 'curve',
      limits: [comeUpWithinSixHours, { ...cookedMeat65Log, longestGapSeconds: readByHand }],
      probes: ['core'],
      surroundings: oven,
      piece: thinRoast,
      plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
      frequency: { everyMinutes: 60 },
      monitoring: {
        what: 'Temperature in the core of the thickest piece of the oven.',
        how: 'Probe in the middle of the piece, away from bone and fat; never an average, the lowest counts.',
        howOften:
          'When the pieces go in, then at least every hour until 130 °F (54.4 °C), then at least every half hour until a row of the table is met (common practice, no source).',
        who: 'The cook.',
      },
      correctiveAction:
        'Keep on roasting until a row of the table is met; if the oven has failed, move the pieces at once to one that works. If the come-up took too long, hold the lot: cooking does not destroy toxin, so a process authority has to judge it, or it is condemned. Find the cause, repair it, watch the next lot with a reading every quarter of an hour, and write what keeps unsafe product from leaving.',
      verification: 'Probes checked in ice water. Records are reviewed before shipment.',
    },
    {
      key: 'humidity',
      at: 'roasting',
      name: 'Humidity while roasting',
      kind: 'critical',
      hazard: 'A dry surface on which Salmonella survives.',
      takenAs: 'attestation',
      limits: [moistHeat],
      follows: 'roasting',
      probes: [],
      frequency: { timesInALot: 1 },
      monitoring: {
        what: 'How humidity was kept, and for how long.',
        how: 'Times at which steam was on or the dampers were shut, or the bag, or weight of the piece and temperature of the oven; written as seen.',
        howOften: 'Every lot, when roasting ends.',
        who: 'The cook.',
      },
      correctiveAction:
        'Hold the lot. Without humidity the table of temperatures and times does not apply: cook again with humidity under the advice of a process authority, or condemn. Find out why steam or damper failed and keep it from happening again.',
      verification: 'The owner watches one cook a month. Records are reviewed before shipment.',
    },
    {
      key: 'chilling',
      at: 'chilling',
      name: 'Chilling',
      kind: 'critical',
      hazard: 'Growth of Clostridium perfringens and Clostridium botulinum while the piece cools.',
      takenAs: 'curve',
      limits: [coolingUncured],
      follows: 'roasting',
      probes: ['core'],
      surroundings: blastChiller,
      piece: thinRoast,
      plausible: { '°F': [2800, 20000], '°C': [-300, 9500] },
      frequency: { everyMinutes: 60 },
      monitoring: {
        what: 'Temperature in the core of the thickest piece.',
        how: 'Probe left in the middle of the piece.',
        howOften:
          'Every quarter of an hour down to 80 °F (26.7 °C), then at least every hour to 40 °F (4.4 °C) (common practice, no source).',
        who: 'The operator at the chiller.',
      },
      correctiveAction:
        'Cut large pieces, spread them and bring them to a colder place at once; go on reading. A missed stage holds the lot: a process authority judges the growth of Clostridium perfringens (at most 1 log), or the lot is condemned. Find the cause, bring the empty chiller to its temperature, follow the next lot closely, and write what keeps unsafe product from leaving.',
      verification: 'Probes checked in ice water. Records are reviewed before shipment.',
    },
    labelCheck,
    coldStorage('critical'),
  ],
  notes: `${caution} A retail store may use the table of the Food Code for whole roasts instead (3-401.11(B)); it is among the published limits.`,
};
