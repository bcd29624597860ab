import { nitriteComminuted } from '@larderbook/haccp';
import type { SayStarter, StarterPoint } from './starter-plan';

/** The salt goes into chopped meat. */
export const curingSalt = (say: SayStarter): StarterPoint => ({
  key: 'curing salt',
  at: 'curing salt',
  name: say('curing-salt'),
  kind: 'critical',
  hazard: say('nitrite-beyond-what-is-allowed'),
  takenAs: 'weighings',
  limits: [nitriteComminuted],
  probes: [],
  monitoring: {
    what: say('weight-of-the-curing-salt'),
    how: say('a-scale-that-shows-0'),
    howOften: say('every-lot-before-the-curing'),
    who: say('the-person-weighing-the-ingredients'),
  },
  correctiveAction: say('do-not-mix-set-meat'),
  verification: say('scale-checked-with-a-test'),
});
