import { limitsIn } from './limits-in';
import { receiving, set } from './published/common-practice.json';

/** Common practice, no published source for this figure; the plan may set another. */
export const receivedChilled = limitsIn(set, receiving)('range', 'received-chilled');
