import { useState } from 'react';
import { useSession } from '../../api/session';

export type Draft = Record<string, string>;

/** The draft outlives a closed dialog and a closed tablet, until it is kept. Nobody finds another person's. */
export function useDraft(subjectId: string, first: Draft = {}) {
  const place = `larderbook.draft.${useSession()?.personId ?? ''}.corrective-action.${subjectId}`;
  const [draft, setDraft] = useState<Draft>(() => ({ ...first, ...read(place) }));
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
