import { useEffect, useState } from 'react';
import type { Entry } from './entry';
import { entries, listen } from './outbox';
import type { PauseReason } from './send';

export type OutboxState = {
  /** `not-yet`: nothing is known so far. `unreadable`: the device holds entries that it cannot give out. */
  read: 'not-yet' | 'done' | 'unreadable';
  waiting: Entry[];
  parked: Entry[];
  /** Undefined before the first attempt. */
  why?: PauseReason;
};

export function useOutbox(): OutboxState {
  const [all, setAll] = useState<Entry[] | 'unreadable'>();
  const [why, setWhy] = useState<PauseReason>();
  useEffect(() => {
    const look = () => void entries().then(setAll, () => setAll('unreadable'));
    look();
    return listen((event) => {
      if (event.state === 'paused') setWhy(event.why);
      look();
    });
  }, []);
  return outboxState(all, why);
}

export function outboxState(all: Entry[] | 'unreadable' | undefined, why?: PauseReason): OutboxState {
  if (all === undefined || all === 'unreadable') return { read: all ?? 'not-yet', waiting: [], parked: [], why };
  return {
    read: 'done',
    waiting: all.filter(({ state }) => state !== 'parked'),
    parked: all.filter(({ state }) => state === 'parked'),
    why,
  };
}
