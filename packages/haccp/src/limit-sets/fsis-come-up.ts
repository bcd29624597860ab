import { limitsIn } from './limits-in';
import { comeUp, set } from './published/us-inspected-2021.json';

/** Critical for every cooking table of the guideline; keeps *S. aureus* growth to 2 log or less. */
export const comeUpWithinSixHours = limitsIn(set, comeUp)('bandTime', 'come-up-6-h');
