import { nitriteComminuted } from '@larderbook/haccp';
import type { StarterPoint } from './starter-plan';

/** The weighing of the curing salt into chopped meat. */
export const curingSalt: StarterPoint = {
  key: 'curing salt',
  at: 'curing salt',
  name: 'Curing salt',
  kind: 'critical',
  hazard: 'Nitrite beyond what is allowed in chopped meat; it is toxic in excess.',
  takenAs: 'weighings',
  limits: [nitriteComminuted],
  probes: [],
  monitoring: {
    what: 'Weight of the curing salt against the trimmed weight of the meat; the concentration follows from both.',
    how: 'A scale that shows 0.1 g or better. The nitrite content is read from the bag of this delivery, 6.25 % or what it says.',
    howOften: 'Every lot, before the curing salt reaches the meat.',
    who: 'The person weighing the ingredients.',
  },
  correctiveAction:
    'Do not mix. Set meat and curing salt apart and hold the lot. Weigh both again. Too much: bring in more trimmed meat until the concentration is within its limit, or condemn; never guess. Find out how the wrong weight came about, show the next weighing to a second person, and write why no product with too much nitrite can have left.',
  verification: 'Scale checked with a test weight. The owner watches one weighing a week. Records are reviewed before shipment.',
};
