import { useState } from 'react';
import { useSession } from '../../api/session';
import type { Entry } from '../../outbox/entry';
import { discard } from '../../outbox/outbox';

export type Draft = Record<string, string>;

/**
 * The draft outlives a closed dialog and a closed tablet, until it is kept. Nobody finds another person's. It goes on from
 * what was refused, and is kept in its place.
 */
export function useDraft(subjectId: string, first: Draft | undefined, refused?: Entry) {
  const place = `larderbook.draft.${useSession()?.personId ?? ''}.corrective-action.${subjectId}`;
  const [draft, setDraft] = useState<Draft>(() => ({ ...first, ...(refused?.body?.action as Draft | undefined), ...read(place) }));
  const write = (next: Draft) => {
    setDraft(next);
    localStorage.setItem(place, JSON.stringify(next));
  };
  const forget = async () => {
    localStorage.removeItem(place);
    if (refused) await discard(refused.id);
  };
  return { draft, write, forget };
}

function read(place: string): Draft {
  try {
    return { ...JSON.parse(localStorage.getItem(place) ?? '{}') };
  } catch {
    return {}; // not ours
  }
}
