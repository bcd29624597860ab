import { degreeHoursFahrenheit } from '@larderbook/haccp';
import type { SayStarter, StarterPoint } from './starter-plan';

/** Degree-hours are counted from this moment. */
export const fermentationBegins = (say: SayStarter): StarterPoint => ({
  key: 'fermentation begins',
  at: 'fermenting',
  name: say('fermentation-begins'),
  kind: 'prerequisite',
  hazard: say('degree-hours-counted-from-later'),
  takenAs: 'attestation',
  limits: [
    {
      kind: 'attestation',
      statement: say('the-sausages-hang-in-the'),
      asks: 'moment',
      source: degreeHoursFahrenheit.source,
    },
  ],
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: say('the-moment-the-first-sausages'),
    how: say('recorded-as-they-are-hung'),
    howOften: say('every-lot-once'),
    who: say('the-sausage-maker'),
  },
  correctiveAction: say('without-a-recorded-start-no'),
  verification: say('the-reviewer-compares-it-with'),
});
