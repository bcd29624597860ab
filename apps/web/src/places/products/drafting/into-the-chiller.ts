import type { ControlPoint } from '@larderbook/contracts';
import { newId } from '../../../outbox/new-id';

/** What asks when the chilling of `chill` began, after the cook that the chill was counted from. */
export const intoTheChiller = ({ stepId, follows, name }: ControlPoint): Omit<ControlPoint, 'controlPointId'> => ({
  stepId,
  follows,
  name: 'Into the chiller',
  kind: 'prerequisite',
  hazard: 'Product that stands warm between cooking and chilling.',
  takenAs: 'attestation',
  limits: [
    {
      limitId: newId(),
      limit: {
        kind: 'attestation',
        statement: 'The product is in the chiller: chilling begins now.',
        asks: 'moment',
        source: { citation: `The limit of ${name || 'the chill'}, which asks how soon chilling begins`, edition: '', confirmed: true },
      },
    },
  ],
  probes: [],
  monitoring: {
    what: 'The moment the last of the lot goes into the chiller.',
    how: 'Recorded as it is put in; one tap takes the time of the day.',
    howOften: 'Every lot, once.',
    who: 'The operator on duty.',
  },
  correctiveAction:
    'Without a recorded time, or after too long a time, hold the lot until the responsible person has decided about it. Find what kept it from the chiller.',
  verification: 'The reviewer compares it with the end of cooking and with the first readings of the core.',
});
