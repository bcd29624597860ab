import { coolingFoodCode, poultryFoodCode } from '@larderbook/haccp';
import type { StarterPlan } from './starter-plan';
import { blastChiller, caution, coldStorage, labelCheck, shallowPan } from './usual-points';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, shipping, trimming } from './usual-steps';

export const cookChill: StarterPlan = {
  process: 'cook-chill',
  title: 'Cooked and chilled dish',
  about:
    'A stew, a soup or a sauce with meat, cooked in a kettle, chilled in shallow trays or a blast chiller, packed cold. For a kitchen or caterer under the Food Code.',
  intendedUse: 'To be reheated and served to the general public; kept refrigerated and eaten within its days.',
  steps: [
    receivingMeat('Cooking'),
    receivingDryGoods,
    coldStorageOfMeat,
    trimming,
    {
      key: 'ingredients',
      name: 'Weighing ingredients',
      hazards: [
        {
          kind: 'chemical',
          what: 'An ingredient with an allergen that the formula does not name',
          likely: false,
          because: 'Ingredients are weighed from the formula, one by one, from recorded deliveries.',
          control: 'Weighings of the lot.',
        },
        {
          kind: 'physical',
          what: 'Stones, string and splinters in vegetables and pulses',
          likely: false,
          because: 'They are washed and looked over.',
          control: 'Looking over.',
        },
      ],
    },
    {
      key: 'cooking',
      name: 'Cooking',
      hazards: [
        {
          kind: 'biological',
          what: 'Survival of Salmonella, Listeria monocytogenes and other pathogens',
          likely: true,
          because: 'Large pieces and thick sauces heat slowly, and the coldest place is not where one stirs.',
          control: 'Cooking.',
        },
      ],
    },
    {
      key: 'chilling',
      name: 'Chilling',
      hazards: [
        {
          kind: 'biological',
          what: 'Growth of Clostridium perfringens and Bacillus cereus from spores that survive cooking',
          likely: true,
          because: 'Thick dishes in deep pans stay warm for hours.',
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
          what: 'Growth of Listeria monocytogenes and of Clostridium botulinum',
          likely: true,
          because: 'The dish has no salt, acid or cure to hold them back: cold and time are all there is.',
          control: 'Cold storage.',
        },
      ],
    },
    shipping,
  ],
  controlPoints: [
    {
      key: 'cooking',
      at: 'cooking',
      name: 'Cooking',
      kind: 'critical',
      hazard: 'Pathogens that survive in the coldest part of the dish.',
      takenAs: 'curve',
      limits: [poultryFoodCode],
      probes: ['core'],
      plausible: { '°F': [3000, 22000], '°C': [-100, 10500] },
      frequency: { timesInALot: 1 },
      monitoring: {
        what: 'Temperature in the thickest piece of meat from the middle of the kettle.',
        how: 'Stir, wait, then hold the probe in the middle of the piece until it is steady.',
        howOften: 'Every kettle: from the time it simmers until 165 °F (74 °C) is passed everywhere.',
        who: 'The cook.',
      },
      correctiveAction:
        'Go on cooking, stir, and measure again at several places. Nothing is portioned before the limit is met. If the kettle has failed, move the dish at once to another or condemn it. Find the cause, write it down, and watch the next kettle from the start.',
      verification: 'Probes checked in ice water. The chef watches one cook a week. Records are reviewed before shipment.',
    },
    {
      key: 'chilling',
      at: 'chilling',
      name: 'Chilling',
      kind: 'critical',
      hazard: 'Growth from spores that survive cooking.',
      takenAs: 'curve',
      limits: [coolingFoodCode],
      follows: 'cooking',
      probes: ['core'],
      surroundings: blastChiller,
      piece: shallowPan,
      plausible: { '°F': [2800, 21200], '°C': [-300, 10000] },
      frequency: { everyMinutes: 30 },
      monitoring: {
        what: 'Temperature in the middle of the thickest tray.',
        how: 'Probe left in the middle of the tray; trays at most 2 in (5 cm) deep (common practice, no source).',
        howOften:
          'Every quarter of an hour down to 70 °F (21 °C), then at least every half hour to 41 °F (5 °C) (common practice, no source).',
        who: 'The cook or the kitchen porter on duty.',
      },
      correctiveAction:
        'While the first two hours run: shallower trays, an ice bath, more air, or reheat to 165 °F (74 °C) and chill again. Once a stage is missed, hold the lot and condemn it unless a process authority supports another use. Find the cause, bring the chiller to its temperature, and watch the next lot closely.',
      verification: 'Probes checked in ice water. Records are reviewed before shipment.',
    },
    labelCheck,
    coldStorage('critical'),
  ],
  notes: `${caution} 165 °F (74 °C) is the limit for poultry and stuffed food and covers every other meat; limits for intact and for ground meat are among the published ones. Date marking: at or below 41 °F (5 °C) at most 7 days, the day of preparation being day 1 (Food Code 3-501.17). Packing hot or in vacuum is another process: see Food Code 3-502.11 and 3-502.12(D) before you do it.`,
};
