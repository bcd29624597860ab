import { listInstruments, type ReplyOf } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';

type Listed = ReplyOf<typeof listInstruments>['instruments'][number];

export type Instrument = { all: Listed[]; chosen?: Listed; choose: (instrumentId: string | undefined) => void };

/** The instrument in use on this device, remembered for each kind; with only one of its kind, that one. */
export function useInstrument(kind: Listed['kind']): Instrument {
  const { data } = useQuery(ask(listInstruments, {}));
  const place = `larderbook.instrument.${kind}`;
  const [id, setId] = useState(() => localStorage.getItem(place) ?? undefined);
  const all = data?.instruments.filter((instrument) => instrument.kind === kind) ?? [];
  const choose = (instrumentId: string | undefined) => {
    localStorage.setItem(place, instrumentId ?? 'none');
    setId(instrumentId ?? 'none');
  };
  const only = all.length === 1 && id === undefined ? all[0] : undefined;
  return { all, chosen: all.find(({ instrumentId }) => instrumentId === id) ?? only, choose };
}
