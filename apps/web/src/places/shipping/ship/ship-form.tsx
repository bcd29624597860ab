import { recordShipment } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Stack } from '../../../ui/stack';
import { Steps, type StepState } from '../../../ui/steps';
import type { Customer } from '../customers/customer';
import { ChooseCustomer } from './choose-customer';
import { LoadPackages } from './load-packages';
import { loadCount, type LoadLine } from './load';
import { SendOff } from './send-off';
import { Shipped } from './shipped';

/** One shipment, one question after the other. Nothing is recorded before the last. */
export function ShipForm() {
  const recording = useRecording(recordShipment);
  const [customer, setCustomer] = useState<Customer>();
  const [load, setLoad] = useState<LoadLine[]>([]);
  const [isLoaded, setLoaded] = useState(false);

  const another = () => {
    recording.again();
    setCustomer(undefined);
    setLoad([]);
    setLoaded(false);
  };
  if (recording.saved && customer) return <Shipped saved={recording.saved} customer={customer} load={load} onAnother={another} />;

  const now = !customer ? 0 : isLoaded ? 2 : 1;
  const state = (step: number): StepState => (step < now ? 'done' : step === now ? 'now' : 'to come');
  return (
    <Stack>
      <Steps
        label="Steps of the shipment"
        steps={[
          { name: 'Customer', state: state(0), note: customer?.name },
          { name: 'Packages', state: state(1), note: load.length > 0 ? sayCount(loadCount(load)) : undefined },
          { name: 'Document, and ship', state: state(2) },
        ]}
      />
      {!customer && <ChooseCustomer onChoose={setCustomer} />}
      {customer && !isLoaded && (
        <LoadPackages customer={customer} load={load} onChange={setLoad} onNext={() => setLoaded(true)} onBack={() => setCustomer(undefined)} />
      )}
      {customer && isLoaded && <SendOff customer={customer} load={load} recording={recording} onBack={() => setLoaded(false)} />}
    </Stack>
  );
}

const sayCount = (count: number) => (count === 1 ? '1 package' : `${count} packages`);
