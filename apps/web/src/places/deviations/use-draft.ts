import { useState } from 'react';
import { nothingWritten, type FourParts } from './four-parts';

/** What is half written about a deviation; it outlives a closed dialog and a closed tablet, until it is kept. */
export function useDraft(deviationId: string) {
  const place = `larderbook.draft.corrective-action.${deviationId}`;
  const [draft, setDraft] = useState<FourParts>(() => read(place));
  const write = (next: FourParts) => {
    setDraft(next);
    localStorage.setItem(place, JSON.stringify(next));
  };
  return { draft, write, forget: () => localStorage.removeItem(place) };
}

function read(place: string): FourParts {
  try {
    return { ...nothingWritten, ...JSON.parse(localStorage.getItem(place) ?? '{}') };
  } catch {
    return nothingWritten; // not ours
  }
}
