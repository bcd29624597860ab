import { own } from './starter-plans/own';
import { usual } from './starter-plans/usual';

/** Plans to start from: what they write into the plan of whoever begins with them, in that person’s language. */
export const starterPlans = { ...usual, ...own };
