import type { SayStarter, StarterStep } from './starter-plan';

/** `otherwise` says what besides nitrite holds Clostridium botulinum back. */
export const weighingCuringSalt = (say: SayStarter, otherwise: string): StarterStep => ({
  key: 'curing salt',
  name: say('weighing-curing-salt-and-ingredients'),
  hazards: [
    {
      kind: 'chemical',
      what: say('too-much-nitrite-it-is'),
      likely: true,
      because: say('a-few-grams-decide-and'),
      control: say('weighed-against-the-trimmed-meat'),
    },
    {
      kind: 'biological',
      what: say('too-little-nitrite-to-hold'),
      likely: false,
      because: say('the-weight-is-aimed-just', { otherwise }),
      control: say('by-curing-salt'),
    },
    {
      kind: 'chemical',
      what: say('an-ingredient-with-an-allergen'),
      likely: false,
      because: say('ingredients-are-weighed-from-the'),
      control: say('weighings-of-the-lot'),
    },
  ],
});

export const grinding = (say: SayStarter): StarterStep => ({
  key: 'grinding',
  name: say('grinding-and-mixing'),
  hazards: [
    {
      kind: 'physical',
      what: say('metal-from-plate-and-knife'),
      likely: false,
      because: say('plate-knife-and-mixer-are'),
      control: say('pre-operational-check'),
    },
    {
      kind: 'biological',
      what: say('growth-of-pathogens-while-the'),
      likely: false,
      because: say('the-meat-stays-below-50'),
      control: say('time-and-temperature-of-the'),
    },
  ],
});

export const stuffing = (say: SayStarter): StarterStep => ({
  key: 'stuffing',
  name: say('stuffing'),
  hazards: [
    {
      kind: 'physical',
      what: say('clips-and-pieces-of-casing'),
      likely: false,
      because: say('links-are-looked-over-while'),
      control: say('looking-over'),
    },
  ],
});
