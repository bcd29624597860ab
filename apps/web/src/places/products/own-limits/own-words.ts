import { forces, purposes, waysKnown, type Force, type Known } from '@larderbook/haccp';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a figure weighs; what a shop has validated itself has no law behind it. */
const forceWords: Record<Force, string> = {
  law: 'Law',
  standard: 'A standard',
  guide: 'An official guide',
  industry: 'The trade’s practice, or your own validation',
  archived: 'A text that is withdrawn',
};
const knownWords: Record<Known, string> = {
  'read in the source': 'Read in the source itself',
  'second hand': 'Second hand',
  'from memory': 'From memory',
};

export const purposeChoices = purposes.map((value) => ({ value, name: capital(value) }));
export const forceChoices = forces.map((value) => ({ value, name: forceWords[value] }));
/** A figure that was read in its source says so with the figure. */
export const unconfirmedChoices = waysKnown
  .filter((known) => known !== 'read in the source')
  .map((value) => ({ value, name: knownWords[value] }));
