import { listInstruments } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import { AddInstrument } from './instruments/add-instrument';
import { CheckInstrument } from './instruments/check-instrument';
import { CorrectCheck } from './instruments/correct-check';
import type { Instrument } from './instruments/check-method';
import { InstrumentTable } from './instruments/instrument-table';
import { ShopFrame } from './shop-frame';

type Open = { what: 'add' } | { what: 'check' | 'correct'; instrument: Instrument };

export function InstrumentsPage() {
  const say = useSay('instruments');
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listInstruments, {}));
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  const add = mayRecord && (
    <Button look="primary" onClick={() => setOpen({ what: 'add' })}>
      {say('add')}
    </Button>
  );
  return (
    <ShopFrame title="instruments" actions={add}>
      {data && data.instruments.length === 0 && <EmptyState title={say('none-yet')}>{say('why-listed')}</EmptyState>}
      {data && data.instruments.length > 0 && (
        <InstrumentTable
          instruments={data.instruments}
          onCheck={mayRecord ? (instrument) => setOpen({ what: 'check', instrument }) : undefined}
          onCorrect={mayRecord ? (instrument) => setOpen({ what: 'correct', instrument }) : undefined}
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && data.instruments.length > 0 && <p>{say('overdue-is-kept')}</p>}
      {!mayRecord && <p>{say('inspector-reads')}</p>}
      {open?.what === 'add' && <AddInstrument onClose={close} />}
      {open?.what === 'correct' && open.instrument.lastCheck && (
        <CorrectCheck instrument={open.instrument} check={open.instrument.lastCheck} onClose={close} />
      )}
      {open?.what === 'check' && <CheckInstrument instrument={open.instrument} onClose={close} />}
    </ShopFrame>
  );
}
