import { correctReceipt, listItems, listSuppliers, massUnits, temperatureUnits, type InputOf, type Receipt } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { DateTimeField } from '../../../ui/date-time-field';
import { FormDialog } from '../../../ui/form-dialog';
import { KeptDialog } from '../../../ui/kept-dialog';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

type Fields = InputOf<typeof correctReceipt>['receipt'];
const asNumber = (text: string) => numberOf(text) ?? NaN;

/** A delivery as it really was, in one form, with why it is corrected; what was made of it is judged again. */
export function CorrectDelivery({ receipt, onClose }: { receipt: Receipt; onClose: () => void }) {
  const say = useSay('receiving');
  const sayLimits = useSay('limits');
  const { zone } = useShop();
  const items = useQuery(ask(listItems, {})).data?.items ?? [];
  const suppliers = useQuery(ask(listSuppliers, {})).data?.suppliers ?? [];
  const recording = useRecording(correctReceipt);
  const [draft, setDraft] = useState(() => draftOf(receipt));
  const [reason, setReason] = useState('');
  const set = (changed: Partial<typeof draft>) => setDraft({ ...draft, ...changed });
  const held = items.find(({ itemId }) => itemId === draft.itemId)?.substance ?? receipt.item.substance;
  const errors = recording.refused?.fields ?? {};
  const mustAsk = recording.refused?.code === 'implausible-value';
  const save = () =>
    recording.save(
      { correctionId: recording.id, amends: receipt.rowId, reason, receipt: { ...fieldsOf(draft), sure: mustAsk || undefined } },
      say('delivery-corrected', { code: receipt.code }),
    );

  if (recording.saved)
    return (
      <KeptDialog
        title={say('delivery-of', { code: receipt.code })}
        state={recording.saved.state}
        recorded={say('judged-again')}
        onClose={onClose}
      />
    );
  return (
    <FormDialog
      title={say('correct-delivery', { code: receipt.code })}
      errors={errors}
      problem={recording.refused && { title: recording.refused.words }}
      busy={recording.busy}
      saveLabel={mustAsk ? say('save-all-the-same') : undefined}
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
      <Columns least={14}>
        <SelectField
          label={say('item')}
          choices={items.map(({ itemId, name }) => ({ value: itemId, name }))}
          value={draft.itemId}
          onChange={(itemId) => set({ itemId })}
          error={errors['receipt/itemId']}
        />
        <SelectField
          label={say('supplier')}
          choices={suppliers.map(({ supplierId, name }) => ({ value: supplierId, name }))}
          value={draft.supplierId}
          onChange={(supplierId) => set({ supplierId })}
          error={errors['receipt/supplierId']}
        />
        <TextField
          label={say('supplier-lot')}
          maxLength={80}
          autoComplete="off"
          value={draft.supplierLot}
          onChange={(supplierLot) => set({ supplierLot })}
          error={errors['receipt/supplierLot']}
        />
      </Columns>
      <Columns least={14}>
        <NumberField
          label={say('weight')}
          value={draft.weight}
          onChange={(weight) => set({ weight })}
          decimals={3}
          error={errors['receipt/weight/value']}
        />
        <SelectField
          label={say('unit-of-weight')}
          choices={massUnits.map((unit) => ({ value: unit, name: unit }))}
          value={draft.unit}
          onChange={(unit) => set({ unit })}
        />
        {held && (
          <NumberField
            label={say('content-of', { substance: sayLimits(codeOf('substance', held)) })}
            optional
            unit="%"
            hint={say('content-hint')}
            value={draft.content}
            onChange={(content) => set({ content })}
            decimals={4}
            error={errors['receipt/fractionPercent']}
          />
        )}
      </Columns>
      <Columns least={14}>
        <NumberField
          label={say('temperature')}
          optional
          belowZero
          value={draft.temperature}
          onChange={(temperature) => set({ temperature })}
          decimals={2}
          error={errors['receipt/temperature/value']}
        />
        <SelectField
          label={say('unit-of-temperature')}
          choices={temperatureUnits.map((unit) => ({ value: unit, name: unit }))}
          value={draft.degrees}
          onChange={(degrees) => set({ degrees })}
        />
        <DateTimeField
          label={say('received')}
          zone={zone}
          value={draft.takenAt}
          onChange={(takenAt) => set({ takenAt })}
          error={errors['receipt/takenAt']}
        />
      </Columns>
      <Columns least={14}>
        <SelectField
          label={say('decision')}
          choices={[
            { value: 'accepted', name: say('accepted') },
            { value: 'refused', name: say('refused') },
          ]}
          value={draft.decision}
          onChange={(decision) => set({ decision })}
        />
        <TextField label={say('reason-of-decision')} optional maxLength={2000} value={draft.why} onChange={(why) => set({ why })} />
      </Columns>
    </FormDialog>
  );
}

const draftOf = ({
  item,
  supplier,
  supplierLot,
  supplierEstablishmentNumber,
  killDate,
  packDate,
  weight,
  fractionPercent,
  temperature,
  decision,
  reason,
  made,
}: Receipt) => ({
  itemId: item.itemId,
  supplierId: supplier.supplierId,
  supplierLot,
  supplierEstablishmentNumber,
  killDate,
  packDate,
  weight: String(weight.value),
  unit: weight.unit,
  content: fractionPercent === undefined ? '' : String(fractionPercent),
  temperature: temperature === undefined ? '' : String(temperature.value),
  degrees: temperature?.unit ?? '°F',
  decision,
  why: reason,
  takenAt: made.at,
});

function fieldsOf({ weight, unit, content, temperature, degrees, why, ...rest }: ReturnType<typeof draftOf>): Fields {
  return {
    ...rest,
    reason: why,
    weight: { value: asNumber(weight), unit },
    fractionPercent: content === '' ? undefined : asNumber(content),
    temperature: temperature === '' ? undefined : { value: asNumber(temperature), unit: degrees },
  };
}
