import { isLanguage, languageFor, type Language } from '@larderbook/messages';
import { useSyncExternalStore } from 'react';

const ofDevice = 'larderbook.language';
const ofPerson = 'larderbook.language-of-person';
const listeners = new Set<() => void>();

/** That of the person signed in, else the device's, else the first of the browser's that Larderbook speaks. */
export const languageHere = (): Language => chosen(ofPerson) ?? chosen(ofDevice) ?? languageFor(navigator.languages);

export const chooseLanguageHere = (language: Language): void => keep(ofDevice, language);

/** Undefined when nobody is signed in, or the person has no language of their own. */
export const speakTo = (person: Language | undefined): void => keep(ofPerson, person);

export const useLanguage = (): Language => useSyncExternalStore(listen, languageHere);

function chosen(place: string): Language | undefined {
  const kept = localStorage.getItem(place) ?? '';
  return isLanguage(kept) ? kept : undefined;
}

function keep(place: string, language: Language | undefined): void {
  if (chosen(place) === language) return;
  if (language) localStorage.setItem(place, language);
  else localStorage.removeItem(place);
  for (const tell of listeners) tell();
}

function listen(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}
