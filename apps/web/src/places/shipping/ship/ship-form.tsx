import { listPackings, recordShipment } from '@larderbook/contracts';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { allOf } from '../../../api/ask';
import { useRecording } from '../../../outbox/use-recording';
import { Stack } from '../../../ui/stack';
import { Steps, type StepState } from '../../../ui/steps';
import { useSay } from '../../../ui/voice';
import type { Customer } from '../customers/customer';
import { ChooseCustomer } from './choose-customer';
import { LoadPackages } from './load-packages';
import { loadCount, type LoadLine } from './load';
import { SendOff, type Papers } from './send-off';
import { Shipped } from './shipped';

/** Nothing is recorded before the last question. */
export function ShipForm() {
  const say = useSay('shipping');
  const queries = useQueryClient();
  const recording = useRecording(recordShipment);
  const [customer, setCustomer] = useState<Customer>();
  const [load, setLoad] = useState<LoadLine[]>([]);
  const [isLoaded, setLoaded] = useState(false);
  const [papers, setPapers] = useState<Papers>(noPapers);
  const [tried, setTried] = useState<LoadLine[]>(); // what was refused says nothing about a load changed since

  const another = () => {
    recording.again();
    setCustomer(undefined);
    setLoad([]);
    setPapers(noPapers);
    setLoaded(false);
  };
  const ship = async ({ customerId, name }: Customer) => {
    setTried(load);
    const lines = load.map(({ packing, count }) => ({ packingId: packing.packingId, count }));
    const takenAt = papers.leftAt || new Date().toISOString();
    const saved = await recording.save(
      { shipmentId: recording.id, customerId, lines, document: papers.document.trim(), takenAt },
      say('shipment-to', { packages: say('packages', { count: loadCount(load) }), customer: name }),
    );
    if (!saved) await queries.invalidateQueries({ queryKey: allOf(listPackings) });
  };
  if (recording.saved && customer) return <Shipped saved={recording.saved} customer={customer} load={load} onAnother={another} />;

  const now = !customer ? 0 : isLoaded ? 2 : 1;
  const state = (step: number): StepState => (step < now ? 'done' : step === now ? 'now' : 'to come');
  return (
    <Stack>
      <Steps
        label={say('steps')}
        steps={[
          { name: say('customer'), state: state(0), note: customer?.name },
          { name: say('packages-step'), state: state(1), note: load.length > 0 ? say('packages', { count: loadCount(load) }) : undefined },
          { name: say('document-step'), state: state(2) },
        ]}
      />
      {!customer && <ChooseCustomer onChoose={setCustomer} />}
      {customer && !isLoaded && (
        <LoadPackages
          customer={customer}
          load={load}
          onChange={setLoad}
          onNext={() => setLoaded(true)}
          onBack={() => setCustomer(undefined)}
        />
      )}
      {customer && isLoaded && (
        <SendOff
          customer={customer}
          load={load}
          papers={papers}
          onChange={setPapers}
          busy={recording.busy}
          refused={tried === load ? recording.refused : undefined}
          onShip={() => void ship(customer)}
          onBack={() => setLoaded(false)}
        />
      )}
    </Stack>
  );
}

const noPapers: Papers = { document: '', leftAt: '' };
