import { exchange } from '../api/exchange';
import { remembered } from '../api/session';
import type { Entry, OutboxStore } from './entry';
import type { Outcome, PauseReason } from './send';
import { makeSender } from './sender';

/** The device could not store it: the form keeps the number and says so. */
export class NotKept extends Error {
  override readonly name = 'NotKept';
}

export type OutboxEvent = Outcome | { state: 'changed' } | { state: 'paused'; why: PauseReason };

const requestTimeoutMs = 20_000;
const listeners = new Set<(event: OutboxEvent) => void>();
const otherTabs = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('larderbook-outbox');

const tellHere = (event: OutboxEvent) => listeners.forEach((listener) => listener(event));
const tell = (event: OutboxEvent) => {
  tellHere(event);
  otherTabs?.postMessage(event);
};

let opened: Promise<OutboxStore> | undefined;
/** Opened when first needed, so that the page does not wait. */
const store = (): Promise<OutboxStore> => (opened ??= import('./device-store').then(({ deviceStore }) => deviceStore()));

const overStore: OutboxStore = {
  add: async (entry) => (await store()).add(entry),
  all: async () => (await store()).all(),
  change: async (id, change) => (await store()).change(id, change).then(() => tell({ state: 'changed' })),
  remove: async (id) => (await store()).remove(id).then(() => tell({ state: 'changed' })),
};

/** A record carries the name of the one who made it, so it is sent under that person's own sign-in. */
function isOwn({ personId, establishmentId }: Entry): boolean {
  const who = remembered();
  return who?.personId === personId && who.establishmentId === establishmentId;
}

/** Harmless to call at any time. */
export const sendNow = makeSender(
  {
    store: overStore,
    deliver: ({ method, path, body }) => exchange({ method, path, body }, AbortSignal.timeout(requestTimeoutMs)),
    tell,
    mayDeliver: isOwn,
  },
  {
    exclusively: (work) => (navigator.locks ? navigator.locks.request('larderbook-outbox', work) : work()),
    schedule: (work, ms) => setTimeout(work, ms),
    paused: (why) => tellHere({ state: 'paused', why }),
  },
);

/** Once this resolves the person may be told "kept on this device". */
export async function keep(entry: Omit<Entry, 'state' | 'failures'>): Promise<void> {
  try {
    await overStore.add({ ...entry, state: 'waiting', failures: 0 });
  } catch (cause) {
    throw new NotKept('The entry was not stored on this device', { cause });
  }
  void navigator.storage?.persist?.(); // asks the browser not to clear it when space is short
  tell({ state: 'changed' });
  void sendNow();
}

/** Oldest first. */
export const entries = (): Promise<Entry[]> => overStore.all();

export async function sendAgain(id: string): Promise<void> {
  await overStore.change(id, { state: 'waiting', problem: undefined, failures: 0 });
  void sendNow();
}

/** For a parked entry that a person deletes, or a corrected one replaces. */
export const discard = (id: string): Promise<void> => overStore.remove(id);

export function listen(listener: (event: OutboxEvent) => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** Sends now, when the network comes back, and when the page is looked at again. */
export function startSending(): void {
  otherTabs?.addEventListener('message', (message: MessageEvent<OutboxEvent>) => tellHere(message.data));
  window.addEventListener('online', () => void sendNow());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void sendNow();
  });
  void sendNow();
}
