import { listPackings } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useOutbox } from '../../../outbox/use-outbox';
import { Button } from '../../../ui/button';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { Customer } from '../customers/customer';
import type { Packing } from '../stock/packing';
import { HowMany } from './how-many';
import { leftBeside, putOn, takeOff, type LoadLine } from './load';
import { LoadList } from './load-list';
import { PackagesToLoad } from './packages-to-load';

type LoadPackagesProps = {
  customer: Customer;
  load: LoadLine[];
  onChange: (load: LoadLine[]) => void;
  onNext: () => void;
  onBack: () => void;
};

export function LoadPackages({ customer, load, onChange, onNext, onBack }: LoadPackagesProps) {
  const say = useSay('shipping');
  const { data, error, refetch } = useQuery(ask(listPackings, { left: 'some' }));
  const [counting, setCounting] = useState<Packing>();
  const { waiting } = useOutbox();
  const packings = data && leftBeside(data.packings, waiting);
  const now = (packing: Packing) =>
    packings?.find(({ packingId }) => packingId === packing.packingId) ?? { ...packing, ...(packings && { left: 0 }) };
  const isOn = ({ packingId }: Packing) => load.some(({ packing }) => packing.packingId === packingId);
  return (
    <Question title={say('what-gets', { name: customer.name })}>
      <Stack>
        {load.length > 0 && <LoadList load={load} onChange={({ packing }) => setCounting(packing)} />}
        <Row>
          {load.length > 0 && (
            <Button look="primary" onClick={onNext}>
              {say('that-is-all')}
            </Button>
          )}
          <Button onClick={onBack}>{say('another-customer')}</Button>
        </Row>
        {packings && (
          <PackagesToLoad packings={packings.filter((packing) => !isOn(packing))} onTap={setCounting} isFirst={load.length === 0} />
        )}
        {!packings && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      </Stack>
      {counting && (
        <HowMany
          packing={now(counting)}
          onLoad={load.find(({ packing }) => packing.packingId === counting.packingId)?.count}
          onCount={(count) => {
            onChange(putOn(load, { packing: now(counting), count }));
            setCounting(undefined);
          }}
          onTakeOff={() => {
            onChange(takeOff(load, counting.packingId));
            setCounting(undefined);
          }}
          onClose={() => setCounting(undefined)}
        />
      )}
    </Question>
  );
}
