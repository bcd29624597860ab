import { useSyncExternalStore } from 'react';
import type { z } from 'zod';
import { useSession } from '../../api/session';
import { announce } from '../../ui/announcer';
import { useSay } from '../../ui/voice';

const drafts = new Map<string, unknown>();
const listeners = new Set<() => void>();

type Kept<D> = {
  draft: D | undefined;
  /** An undefined draft is forgotten. */
  keep: (draft: D | undefined) => void;
};

/**
 * A draft is kept on this device, for the person who began it, until it is saved or thrown away, so that it outlives a
 * closed tablet. A draft of an older shape is passed over.
 */
export function useKeptDraft<S extends z.ZodType>(schema: S, name: string): Kept<z.output<S>> {
  const say = useSay('products');
  const key = `larderbook.draft.${useSession()?.personId ?? ''}.${name}`;
  const draft = useSyncExternalStore(listen, () => draftOf(schema, key));
  return { draft, keep: (next) => keepDraft(key, next, () => announce(say('no-room-here'), { urgent: true })) };
}

function listen(listener: () => void) {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** Read from the device once; from then on the draft in memory counts, with every blank as typed. */
function draftOf<S extends z.ZodType>(schema: S, key: string): z.output<S> | undefined {
  if (!drafts.has(key)) drafts.set(key, read(schema, key));
  return drafts.get(key) as z.output<S> | undefined;
}

function read(schema: z.ZodType, key: string): unknown {
  try {
    return schema.safeParse(JSON.parse(localStorage.getItem(key) ?? 'null')).data;
  } catch {
    return undefined; // not JSON: nothing of ours
  }
}

function keepDraft(key: string, draft: unknown, onNoRoom: () => void): void {
  drafts.set(key, draft);
  listeners.forEach((listener) => listener());
  try {
    if (draft === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(draft));
  } catch {
    onNoRoom();
  }
}
