import type { Standing } from '@larderbook/contracts';
import type { State } from '../../ui/status';

export const standingState: Record<Standing, State> = {
  'in-work': 'running',
  'on-hold': 'missed',
  'to-review': 'undetermined',
  cleared: 'met',
  shipped: 'met',
  condemned: 'missed',
  ended: 'met',
};
