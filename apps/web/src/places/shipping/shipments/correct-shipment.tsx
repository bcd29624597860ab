import { recordShipment } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { DateTimeField } from '../../../ui/date-time-field';
import { FormDialog } from '../../../ui/form-dialog';
import { KeptDialog } from '../../../ui/kept-dialog';
import { NumberField } from '../../../ui/number-field';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { isTakenOff, loadOf } from './corrected-load';
import type { Shipment } from './shipment';

export function CorrectShipment({ shipment, onClose }: { shipment: Shipment; onClose: () => void }) {
  const say = useSay('shipping');
  const { zone } = useShop();
  const { number, customer, lines, rowId, made } = shipment;
  const named = { number: String(number) };
  const recording = useRecording(recordShipment);
  const [reason, setReason] = useState('');
  const [document, setDocument] = useState(shipment.document);
  const [leftAt, setLeftAt] = useState(made.at);
  const [counts, setCounts] = useState(() => new Map(lines.map(({ packingId, count }) => [packingId, String(count)])));
  const errors = recording.refused?.fields ?? {};
  const load = loadOf(lines, counts);
  const errorOf = (packingId: string) => errors[`lines.${load.findIndex((line) => line.packingId === packingId)}.count`];
  const save = () =>
    recording.save(
      {
        ...{ shipmentId: recording.id, customerId: customer.customerId, document, takenAt: leftAt, amends: rowId, reason },
        lines: load,
      },
      say('shipment-corrected', named),
    );
  if (recording.saved) return <KeptDialog title={say('shipment', named)} state={recording.saved.state} onClose={onClose} />;
  return (
    <FormDialog
      title={say('correct-shipment', named)}
      errors={errors}
      problem={recording.refused && { title: recording.refused.words }}
      busy={recording.busy}
      onSave={() => void save()}
      onClose={onClose}
    >
      <TextArea
        label={say('why-corrected')}
        hint={say('stays-struck')}
        maxLength={2000}
        value={reason}
        onChange={setReason}
        error={errors.reason}
      />
      {lines.map(({ packingId, packingCode, productName }) => (
        <NumberField
          key={packingId}
          label={say('packages-of', { code: packingCode })}
          hint={isTakenOff(counts, packingId) ? say('is-taken-off', { product: productName }) : productName}
          error={errorOf(packingId)}
          decimals={0}
          value={counts.get(packingId) ?? ''}
          onChange={(count) => setCounts(new Map(counts).set(packingId, count))}
        />
      ))}
      <TextField label={say('document')} optional maxLength={80} autoComplete="off" value={document} onChange={setDocument} />
      <DateTimeField label={say('when-left')} zone={zone} value={leftAt} onChange={setLeftAt} error={errors.takenAt} />
    </FormDialog>
  );
}
