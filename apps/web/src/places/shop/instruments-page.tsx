import { listInstruments } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { AddInstrument } from './instruments/add-instrument';
import { CheckInstrument } from './instruments/check-instrument';
import { CorrectCheck } from './instruments/correct-check';
import type { Instrument } from './instruments/check-method';
import { InstrumentTable } from './instruments/instrument-table';
import { ShopFrame } from './shop-frame';

type Doing = { what: 'add' } | { what: 'check' | 'correct'; instrument: Instrument };

/** Thermometers, scales and meters: when each was last right, and which is due. */
export function InstrumentsPage() {
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listInstruments, {}));
  const [doing, setDoing] = useState<Doing>();
  const close = () => setDoing(undefined);
  const add = mayRecord && (
    <Button look="primary" onClick={() => setDoing({ what: 'add' })}>
      Add an instrument
    </Button>
  );
  return (
    <ShopFrame title="Instruments" actions={add}>
      {data && data.instruments.length === 0 && (
        <EmptyState title="No instrument yet">
          Each thermometer and scale stands here with its last check, so that a reading can be believed.
        </EmptyState>
      )}
      {data && data.instruments.length > 0 && (
        <InstrumentTable
          instruments={data.instruments}
          onCheck={mayRecord ? (instrument) => setDoing({ what: 'check', instrument }) : undefined}
          onCorrect={mayRecord ? (instrument) => setDoing({ what: 'correct', instrument }) : undefined}
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && data.instruments.length > 0 && <p>What is measured with an instrument that is overdue is kept, and carries that remark.</p>}
      {!mayRecord && <p>An inspector reads; checks are recorded by the people of the shop.</p>}
      {doing?.what === 'add' && <AddInstrument onClose={close} />}
      {doing?.what === 'correct' && doing.instrument.lastCheck && (
        <CorrectCheck instrument={doing.instrument} check={doing.instrument.lastCheck} onClose={close} />
      )}
      {doing?.what === 'check' && <CheckInstrument instrument={doing.instrument} onClose={close} />}
    </ShopFrame>
  );
}
