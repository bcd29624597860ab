import { drySausage } from './products/dry-sausage';
import { pulledPork } from './products/pulled-pork';
import { roast } from './products/roast';
import { smokedSausage } from './products/smoked-sausage';
import { stew } from './products/stew';

/** What the invented shop makes, by the names used in these files. */
export const products = { sausage: smokedSausage, stew, roast, pulledPork, drySausage };
export type ProductKey = keyof typeof products;
