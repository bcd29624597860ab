import { useState } from 'react';

export type Draft = Record<string, string>;

/** What is half written about a deviation; it outlives a closed dialog and a closed tablet, until it is kept. */
export function useDraft(deviationId: string) {
  const place = `larderbook.draft.corrective-action.${deviationId}`;
  const [draft, setDraft] = useState<Draft>(() => read(place));
  const write = (next: Draft) => {
    setDraft(next);
    localStorage.setItem(place, JSON.stringify(next));
  };
  return { draft, write, forget: () => localStorage.removeItem(place) };
}

function read(place: string): Draft {
  try {
    return { ...JSON.parse(localStorage.getItem(place) ?? '{}') };
  } catch {
    return {}; // not ours
  }
}
