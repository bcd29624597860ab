import { packLot, type Lot } from '@larderbook/contracts';
import { useBy, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { Dialog } from '../../../ui/dialog';
import { Facts } from '../../../ui/facts';
import { Keypad, type Entered } from '../../../ui/keypad';
import { dateWords } from '../../../ui/moment';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { wallTime } from '../../../ui/wall-time';
import { sayWeight } from '../say/say-entered';
import { useShop } from '../../../api/use-shop';
import { AfterSaving } from './after-saving';
import { Circumstances } from './circumstances';
import { massUnits } from './mass-units';
import { useRecording } from '../../../outbox/use-recording';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

/** A run of equal packages, one number a step: how many, the net weight of one, and the use-by as proposed. */
export function Pack({ lot, onClose }: { lot: Lot; onClose: () => void }) {
  const { units, zone } = useShop();
  const recording = useRecording(packLot);
  const takenAt = useTakenAt();
  const [counted, setCounted] = useState<Entered>({ text: '', unit: 'packages' });
  const [count, setCount] = useState<number>();
  const [net, setNet] = useState<EnteredMass>();
  const proposed = useBy(wallTime(takenAt.at(), zone).slice(0, 10), lot.useByDays);
  const [changed, setChanged] = useState('');
  const by = changed || proposed;

  const again = () => {
    recording.again();
    setCount(undefined);
    setNet(undefined);
    setCounted({ ...counted, text: '' });
  };
  if (count === undefined) {
    return (
      <Dialog title="Pack" onClose={onClose}>
        <Keypad
          label="How many packages of one weight?" units={[{ unit: 'packages', least: 1, most: 2000, decimals: 0 }]} entered={counted} onChange={setCounted} saveLabel="Next: net weight"
          onSave={({ value }) => value > 0 && setCount(value)} error={counted.text !== '' && Number(counted.text) === 0 ? 'At least 1.' : undefined}
        />
      </Dialog>
    );
  }
  if (!net) {
    return (
      <Dialog title={`Pack ${count}`} onClose={onClose} actions={<Button onClick={() => setCount(undefined)}>Back to the count</Button>}>
        <WeightKeypad label="Net weight of one package" units={massUnits(units, usualGrams)} saveLabel="Next: use-by" onSave={setNet} />
      </Dialog>
    );
  }
  const what = `${count} × ${sayWeight(net)}`;
  if (recording.saved) {
    const { saved } = recording;
    const reply = saved.state === 'sent' ? saved.reply : undefined;
    return (
      <Dialog title="Packed" onClose={onClose} closeLabel="Done">
        <AfterSaving state={saved.state} what={`${reply?.code ?? ''} ${what}, use by ${dateWords(reply?.useBy ?? by)}`.trim()} flags={reply?.flags}>
          <Button onClick={again}>Pack more</Button>
        </AfterSaving>
      </Dialog>
    );
  }
  const save = () => recording.save(
    { packingId: recording.id, lotId: lot.lotId, count, net, useBy: changed || undefined, takenAt: takenAt.at() },
    `Packed ${what}, lot ${lot.code}`,
  );
  return (
    <Dialog
      title={`Pack ${what}`} onClose={onClose}
      actions={<><Button onClick={() => setNet(undefined)}>Back to the weight</Button><Button look="primary" busy={recording.busy && 'Keeping it…'} onClick={() => void save()}>Keep</Button></>}
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <Facts facts={[{ name: 'Use by', value: dateWords(by) }, { name: 'Storage', value: lot.storage }]} />
        <DateField label="Another use-by" optional hint={`Proposed: ${lot.useByDays} days from packing`} value={changed} onChange={setChanged} />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}

/** A package of a small shop. Common practice, no source. */
const usualGrams = 5000;
