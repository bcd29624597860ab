import { degreeHoursFahrenheit } from '@larderbook/haccp';
import type { StarterPoint } from './starter-plan';

/** The moment from which degree-hours are counted; recorded late, it is seen to be. */
export const fermentationBegins: StarterPoint = {
  key: 'fermentation begins',
  at: 'fermenting',
  name: 'Fermentation begins',
  kind: 'prerequisite',
  hazard: 'Degree-hours counted from later than they began.',
  takenAs: 'attestation',
  limits: [
    {
      kind: 'attestation',
      statement: 'The sausages hang in the chamber: fermentation begins now.',
      asks: 'moment',
      source: degreeHoursFahrenheit.source,
    },
  ],
  probes: [],
  frequency: { timesInALot: 1 },
  monitoring: {
    what: 'The moment the first sausages of the lot hang in the chamber.',
    how: 'Recorded as they are hung; one tap takes the time of the day.',
    howOften: 'Every lot, once.',
    who: 'The sausage maker.',
  },
  correctiveAction:
    'Without a recorded start no degree-hours are known to be few enough: hold the lot until the person who hung it has recorded when that was.',
  verification: 'The reviewer compares it with the last weighing and with the first reading of the chamber.',
};
