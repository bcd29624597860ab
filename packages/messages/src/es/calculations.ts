import { cookedAndCooled } from './calculations/cooked-and-cooled';
import { weighed } from './calculations/weighed';

/** Calculations step by step: what is asked and given, rules, results, and what to bear in mind. */
export const calculations = { ...weighed, ...cookedAndCooled };
