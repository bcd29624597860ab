import { useEffect, useState } from 'react';
import type { Entry } from './entry';
import { entries, listen } from './outbox';
import type { Stop } from './send';

export type OutboxState = {
  waiting: Entry[];
  parked: Entry[];
  /** Why the last attempt stopped; undefined before the first. */
  why?: Stop;
};

/** What is kept on this device and not yet acknowledged, following every change. */
export function useOutbox(): OutboxState {
  const [all, setAll] = useState<Entry[]>([]);
  const [why, setWhy] = useState<Stop>();
  useEffect(() => {
    const look = () => void entries().then(setAll, () => setAll([]));
    look();
    return listen((event) => {
      if (event.state === 'stopped') setWhy(event.why);
      look();
    });
  }, []);
  return {
    waiting: all.filter(({ state }) => state !== 'parked'),
    parked: all.filter(({ state }) => state === 'parked'),
    why,
  };
}
