import type { Said } from '@larderbook/contracts';
import { write, type Words } from '../say';
import type { Voice } from '../voice';
import { codedText, spoken } from './spoken';

/** Puts into words what a record says in one of its fields, and what the field is called. */
export type TellSaid = (said: Said) => string;

/** @param words those of entries, alone or among others */
export function saidTeller(words: Words, voice: Voice): TellSaid {
  const told = spoken(words, voice);
  return (said) => (typeof said === 'object' && 'code' in said ? codedText(told, said) : write(said, voice));
}
