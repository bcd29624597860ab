import type { InputOf } from '@larderbook/contracts';
import { useSession } from '../api/session';
import { keepAndSend, type KeptResult, type RecordRoute } from './keep-and-send';

/**
 * `await keep(recordReading, { readingId, … }, 'Core temperature 151.5 °F, lot 26061-2')`: people see the sentence
 * while it waits.
 */
export function useKeep() {
  const by = useSession();
  return async <R extends RecordRoute>(route: R, input: InputOf<R>, what: string): Promise<KeptResult<R>> => {
    if (!by) throw new Error('Nobody is signed in on this device.');
    return keepAndSend(route, input, what, by);
  };
}
