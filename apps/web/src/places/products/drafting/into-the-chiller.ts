import type { ControlPoint } from '@larderbook/contracts';
import { newId } from '../../../outbox/new-id';
import type { Say, WordsOf } from '@larderbook/messages';

export const intoTheChiller = (
  { stepId, follows, name }: ControlPoint,
  say: Say<WordsOf<'plan-points'>>,
): Omit<ControlPoint, 'controlPointId'> => ({
  stepId,
  follows,
  name: say('chiller-name'),
  kind: 'prerequisite',
  hazard: say('chiller-hazard'),
  takenAs: 'attestation',
  limits: [
    {
      limitId: newId(),
      limit: {
        kind: 'attestation',
        statement: say('chiller-statement'),
        asks: 'moment',
        source: { citation: say('chiller-source', { chill: name || say('the-chill') }), edition: '', confirmed: true },
      },
    },
  ],
  probes: [],
  monitoring: {
    what: say('chiller-what'),
    how: say('chiller-how'),
    howOften: say('chiller-how-often'),
    who: say('chiller-who'),
  },
  correctiveAction: say('chiller-action'),
  verification: say('chiller-verification'),
});
