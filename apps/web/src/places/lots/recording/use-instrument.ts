import { listInstruments, type ReplyOf } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';

type Listed = ReplyOf<typeof listInstruments>['instruments'][number];

export type Instrument = { all: Listed[]; chosen?: Listed; choose: (instrumentId: string | undefined) => void };

/**
 * Remembered on this device for each kind; the only one of its kind is chosen. One of the kind "other" must read in
 * `unit`: a water activity meter tells no share of moisture.
 */
export function useInstrument(kind: Listed['kind'], unit?: string): Instrument {
  const { data } = useQuery(ask(listInstruments, {}));
  const place = `larderbook.instrument.${kind}${kind === 'other' && unit ? `.${unit}` : ''}`;
  const [taken, setTaken] = useState<Record<string, string>>({});
  const id = taken[place] ?? localStorage.getItem(place) ?? undefined; // the keypad may have changed to another kind
  const reads = (instrument: Listed) => kind !== 'other' || !unit || instrument.unit === unit;
  const all = data?.instruments.filter((instrument) => instrument.kind === kind && reads(instrument)) ?? [];
  const choose = (instrumentId: string | undefined) => {
    localStorage.setItem(place, instrumentId ?? 'none');
    setTaken({ ...taken, [place]: instrumentId ?? 'none' });
  };
  const only = all.length === 1 && id === undefined ? all[0] : undefined;
  return { all, chosen: all.find(({ instrumentId }) => instrumentId === id) ?? only, choose };
}
