import { useEffect, useState } from 'react';
import type { Entry } from './entry';
import { entries, listen } from './outbox';
import type { PauseReason } from './send';

export type OutboxState = {
  waiting: Entry[];
  parked: Entry[];
  /** Undefined before the first attempt. */
  why?: PauseReason;
};

export function useOutbox(): OutboxState {
  const [all, setAll] = useState<Entry[]>([]);
  const [why, setWhy] = useState<PauseReason>();
  useEffect(() => {
    const look = () => void entries().then(setAll, () => setAll([]));
    look();
    return listen((event) => {
      if (event.state === 'paused') setWhy(event.why);
      look();
    });
  }, []);
  return {
    waiting: all.filter(({ state }) => state !== 'parked'),
    parked: all.filter(({ state }) => state === 'parked'),
    why,
  };
}
