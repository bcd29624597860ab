import type { Words } from '../say';

/**
 * Titles and notes of published sets, by what the set itself says in English: here there is nothing to add to it. In
 * another language each of them has a message, as `limits` of its folder has for what a limit carries into a plan.
 */
export const published: Words = {};
