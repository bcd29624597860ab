import { own } from './starter-plans/own';
import { usual } from './starter-plans/usual';

export const starterPlans = { ...usual, ...own };
