import type { RangeLimit } from '../limits/limit';
import { both } from './printed';

/** Chilled meat at the door. Common practice, no published source for this figure; the plan may set another. */
export const receivedChilled: RangeLimit = {
  kind: 'range',
  measured: 'temperature',
  max: both(40, 4.4),
  source: {
    citation: 'Common practice for chilled meat at receipt, no published source',
    edition: 'none',
    confirmed: false,
  },
};
