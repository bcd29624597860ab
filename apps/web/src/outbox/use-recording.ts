import type { InputOf } from '@larderbook/contracts';
import { useRef, useState } from 'react';
import type { KeptResult, RecordRoute } from './keep-and-send';
import { useSay } from '../ui/voice';
import { newId } from './new-id';
import { discard, NotKept } from './outbox';
import { refusedByContract, refusedByServer, type Refused } from './refused';
import { useKeep } from './use-keep';

/** With the server's answer, or kept on this device until there is one. */
export type Saved<R extends RecordRoute> = Exclude<KeptResult<R>, { state: 'parked' }>;

export type Recording<R extends RecordRoute> = {
  /** UUIDv7, made when the form opens: a double tap or a retry lands once. */
  id: string;
  busy: boolean;
  saved?: Saved<R>;
  refused?: Refused;
  /** Undefined when it was refused. */
  save(input: InputOf<R>, what: string): Promise<Saved<R> | undefined>;
  /** For one more record, under an id of its own. */
  again(): void;
  /** Another record was made instead of what was refused. */
  dropRefused(): Promise<void>;
};

/** The same for every route. */
export type Progress = Pick<Recording<RecordRoute>, 'busy' | 'refused'> & { saved?: { state: 'sent' | 'kept' } };

/** The record is kept on this device first, then sent. */
export function useRecording<R extends RecordRoute>(route: R): Recording<R> {
  const say = useSay('shared');
  const sayFaults = useSay('faults');
  const keep = useKeep();
  const [id, setId] = useState(() => newId());
  const [busy, setBusy] = useState(false);
  const [saved, setSaved] = useState<Saved<R>>();
  const [refused, setRefused] = useState<Refused>();
  const parked = useRef<string>(undefined);
  const isSaving = useRef(false); // known before the page is drawn again

  const dropRefused = async () => {
    if (parked.current) await discard(parked.current);
    parked.current = undefined;
  };
  const save = async (input: InputOf<R>, what: string): Promise<Saved<R> | undefined> => {
    if (isSaving.current) return undefined;
    const wrong = refusedByContract(route, input, sayFaults);
    setRefused(wrong);
    if (wrong) return undefined;
    isSaving.current = true;
    setBusy(true);
    try {
      const result = await keep(route, input, what);
      await dropRefused(); // the corrected record stands in its place
      if (result.state !== 'parked') {
        setSaved(result);
        return result;
      }
      parked.current = id;
      setId(newId()); // the next try is another record
      setRefused(refusedByServer(result.problem));
    } catch (error) {
      setRefused({ words: say(error instanceof NotKept ? 'not-stored' : 'not-saved'), fields: {} });
    } finally {
      isSaving.current = false;
      setBusy(false);
    }
  };
  const again = () => {
    setId(newId());
    setSaved(undefined);
    setRefused(undefined);
  };
  return { id, busy, saved, refused, save, again, dropRefused };
}
