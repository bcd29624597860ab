import type { InputOf, ProblemBody } from '@larderbook/contracts';
import { useRef, useState } from 'react';
import { ApiProblem } from '../api/api-problem';
import { fieldErrors, type FieldErrors } from '../api/check';
import type { KeptResult, RecordRoute } from './keep-and-send';
import { useSay } from '../ui/voice';
import { newId } from './new-id';
import { discard, NotKept } from './outbox';
import { useKeep } from './use-keep';

/** With the server's answer, or kept on this device until there is one. */
export type Saved<R extends RecordRoute> = Exclude<KeptResult<R>, { state: 'parked' }>;

/** A sentence, and one beside each field; the form keeps what was typed. */
export type Refused = { code?: ProblemBody['code']; words: string; fields: FieldErrors };

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
};

/** The same for every route. */
export type Progress = Pick<Recording<RecordRoute>, 'busy' | 'refused'> & { saved?: { state: 'sent' | 'kept' } };

/** The record is kept on this device first, then sent. */
export function useRecording<R extends RecordRoute>(route: R): Recording<R> {
  const say = useSay('shared');
  const keep = useKeep();
  const [id, setId] = useState(() => newId());
  const [busy, setBusy] = useState(false);
  const [saved, setSaved] = useState<Saved<R>>();
  const [refused, setRefused] = useState<Refused>();
  const parked = useRef<string>(undefined);

  const save = async (input: InputOf<R>, what: string): Promise<Saved<R> | undefined> => {
    setBusy(true);
    setRefused(undefined);
    try {
      const result = await keep(route, input, what);
      if (parked.current) await discard(parked.current); // the corrected record stands in its place
      parked.current = undefined;
      if (result.state !== 'parked') {
        setSaved(result);
        return result;
      }
      parked.current = id;
      setId(newId()); // the next try is another record
      setRefused(sayRefused(result.problem));
    } catch (error) {
      setRefused({ words: say(error instanceof NotKept ? 'not-stored' : 'not-saved'), fields: {} });
    } finally {
      setBusy(false);
    }
  };
  const again = () => {
    setId(newId());
    setSaved(undefined);
    setRefused(undefined);
  };
  return { id, busy, saved, refused, save, again };
}

function sayRefused(problem: ProblemBody): Refused {
  const fields = fieldErrors(new ApiProblem(problem));
  const words = [...new Set([problem.detail ?? problem.title, ...Object.values(fields)])].join(' ');
  return { code: problem.code, words, fields };
}
