import { isLanguage, languageFor, type Language } from '@larderbook/messages';
import { useSyncExternalStore } from 'react';

const place = 'larderbook.language';
const listeners = new Set<() => void>();

/** The language chosen on this device; where none was, the first of the browser's that Larderbook speaks. */
export function languageHere(): Language {
  const chosen = localStorage.getItem(place) ?? '';
  return isLanguage(chosen) ? chosen : languageFor(navigator.languages);
}

export function chooseLanguage(language: Language): void {
  localStorage.setItem(place, language);
  for (const tell of listeners) tell();
}

export const useLanguage = (): Language => useSyncExternalStore(listen, languageHere);

function listen(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}
