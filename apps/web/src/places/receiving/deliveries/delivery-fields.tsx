import { listItems, listSuppliers, massUnits, temperatureUnits, type Receipt } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import type { FieldErrors } from '../../../api/check';
import { useShop } from '../../../api/use-shop';
import { DateTimeField } from '../../../ui/date-time-field';
import { NumberField } from '../../../ui/number-field';
import { FindField } from '../../../ui/find-field';
import { SelectField } from '../../../ui/select-field';
import { Columns } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import type { CorrectedDraft } from './corrected-draft';

type FieldsProps = { draft: CorrectedDraft; errors: FieldErrors; onChange: (draft: CorrectedDraft) => void };

export function DeliveryFields({ receipt, ...fields }: FieldsProps & { receipt: Receipt }) {
  const items = useQuery(ask(listItems, {})).data?.items ?? [];
  const substance = items.find(({ itemId }) => itemId === fields.draft.itemId)?.substance ?? receipt.item.substance;
  return (
    <>
      <WhatCame {...fields} items={items} />
      <HowMuch {...fields} substance={substance} />
      <HowWarmAndWhen {...fields} />
      <WhatWasDecided {...fields} />
    </>
  );
}

function WhatCame({ draft, errors, onChange, items }: FieldsProps & { items: { itemId: string; name: string }[] }) {
  const say = useSay('receiving');
  const suppliers = useQuery(ask(listSuppliers, {})).data?.suppliers ?? [];
  return (
    <Columns least={14}>
      <FindField
        label={say('item')}
        choices={items.map(({ itemId, name }) => ({ value: itemId, name }))}
        value={draft.itemId}
        onChange={(itemId) => onChange({ ...draft, itemId })}
        error={errors['receipt.itemId']}
      />
      <FindField
        label={say('supplier')}
        choices={suppliers.map(({ supplierId, name }) => ({ value: supplierId, name }))}
        value={draft.supplierId}
        onChange={(supplierId) => onChange({ ...draft, supplierId })}
        error={errors['receipt.supplierId']}
      />
      <TextField
        label={say('supplier-lot')}
        maxLength={80}
        autoComplete="off"
        value={draft.supplierLot}
        onChange={(supplierLot) => onChange({ ...draft, supplierLot })}
        error={errors['receipt.supplierLot']}
      />
    </Columns>
  );
}

/** A curing salt also has a strength. */
function HowMuch({ draft, errors, onChange, substance }: FieldsProps & Pick<Receipt['item'], 'substance'>) {
  const say = useSay('receiving');
  const sayLimits = useSay('limits');
  return (
    <Columns least={14}>
      <NumberField
        label={say('weight')}
        value={draft.weight}
        onChange={(weight) => onChange({ ...draft, weight })}
        decimals={3}
        error={errors['receipt.weight.value']}
      />
      <SelectField
        label={say('unit-of-weight')}
        choices={massUnits.map((unit) => ({ value: unit, name: unit }))}
        value={draft.unit}
        onChange={(unit) => onChange({ ...draft, unit })}
      />
      {substance && (
        <NumberField
          label={say('content-of', { substance: sayLimits(codeOf('substance', substance)) })}
          optional
          unit="%"
          hint={say('content-hint')}
          value={draft.content}
          onChange={(content) => onChange({ ...draft, content })}
          decimals={4}
          error={errors['receipt.fractionPercent']}
        />
      )}
    </Columns>
  );
}

function HowWarmAndWhen({ draft, errors, onChange }: FieldsProps) {
  const say = useSay('receiving');
  const { zone } = useShop();
  return (
    <Columns least={14}>
      <NumberField
        label={say('temperature')}
        optional
        belowZero
        value={draft.temperature}
        onChange={(temperature) => onChange({ ...draft, temperature })}
        decimals={2}
        error={errors['receipt.temperature.value']}
      />
      <SelectField
        label={say('unit-of-temperature')}
        choices={temperatureUnits.map((unit) => ({ value: unit, name: unit }))}
        value={draft.degrees}
        onChange={(degrees) => onChange({ ...draft, degrees })}
      />
      <DateTimeField
        label={say('received')}
        zone={zone}
        value={draft.takenAt}
        onChange={(takenAt) => onChange({ ...draft, takenAt })}
        error={errors['receipt.takenAt']}
      />
    </Columns>
  );
}

function WhatWasDecided({ draft, onChange }: FieldsProps) {
  const say = useSay('receiving');
  return (
    <Columns least={14}>
      <SelectField
        label={say('decision')}
        choices={[
          { value: 'accepted', name: say('accepted') },
          { value: 'refused', name: say('refused') },
        ]}
        value={draft.decision}
        onChange={(decision) => onChange({ ...draft, decision })}
      />
      <TextField
        label={say('reason-of-decision')}
        optional
        maxLength={2000}
        value={draft.why}
        onChange={(why) => onChange({ ...draft, why })}
      />
    </Columns>
  );
}
