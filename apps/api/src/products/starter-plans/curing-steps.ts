import type { StarterStep } from './starter-plan';

/** Steps of what is chopped, cured and stuffed, with the hazards found at them. */

/** `otherwise`: what besides the nitrite holds Clostridium botulinum back. */
export const weighingCuringSalt = (otherwise: string): StarterStep => ({
  key: 'curing salt',
  name: 'Weighing curing salt and ingredients',
  hazards: [
    {
      kind: 'chemical',
      what: 'Too much nitrite: it is toxic in excess',
      likely: true,
      because: 'A few grams decide, and curing salt looks like salt once its colour has faded.',
      control: 'Weighed against the trimmed meat at the control point “Curing salt”.',
    },
    {
      kind: 'biological',
      what: 'Too little nitrite to hold back Clostridium botulinum',
      likely: false,
      because: `The weight is aimed just under the maximum, and ${otherwise}.`,
      control: 'Curing salt.',
    },
    {
      kind: 'chemical',
      what: 'An ingredient with an allergen that the formula does not name',
      likely: false,
      because: 'Ingredients are weighed from the formula, one by one, from recorded deliveries.',
      control: 'Weighings of the lot.',
    },
  ],
});

export const grinding: StarterStep = {
  key: 'grinding',
  name: 'Grinding and mixing',
  hazards: [
    {
      kind: 'physical',
      what: 'Metal from plate and knife',
      likely: false,
      because: 'Plate, knife and mixer are looked over before and after each lot; no piece has been missing.',
      control: 'Pre-operational check.',
    },
    {
      kind: 'biological',
      what: 'Growth of pathogens while the meat is worked',
      likely: false,
      because: 'The meat stays below 50 °F (10 °C) and is worked in less than two hours (common practice, no source).',
      control: 'Time and temperature of the room, under the sanitation procedures.',
    },
  ],
};

export const stuffing: StarterStep = {
  key: 'stuffing',
  name: 'Stuffing',
  hazards: [
    {
      kind: 'physical',
      what: 'Clips and pieces of casing',
      likely: false,
      because: 'Links are looked over while they are hung.',
      control: 'Looking over.',
    },
  ],
};
