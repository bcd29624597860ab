import type { FieldErrors } from '../../../api/check';
import { DateField } from '../../../ui/date-field';
import { Columns } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { FractionField } from '../items/fraction-field';
import type { Item } from '../known';
import type { Label } from './delivery-draft';

type LabelFieldsProps = { item: Item; label: Label; errors: FieldErrors; onChange: (label: Label) => void };

export function LabelFields({ item, label, errors, onChange }: LabelFieldsProps) {
  const say = useSay('receiving');
  return (
    <>
      <TextField
        label={say('supplier-lot')}
        hint={say('lot-hint')}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        maxLength={80}
        value={label.supplierLot}
        error={errors.supplierLot}
        onChange={(supplierLot) => onChange({ ...label, supplierLot })}
      />
      {item.substance && (
        <FractionField
          substance={item.substance}
          value={label.fraction}
          error={errors.fractionPercent}
          onChange={(fraction) => onChange({ ...label, fraction })}
        />
      )}
      <TextField
        label={say('their-establishment')}
        optional
        autoComplete="off"
        spellCheck={false}
        maxLength={40}
        value={label.supplierEstablishmentNumber}
        error={errors.supplierEstablishmentNumber}
        onChange={(supplierEstablishmentNumber) => onChange({ ...label, supplierEstablishmentNumber })}
      />
      <Columns>
        {item.kind === 'meat' && (
          <DateField
            label={say('kill-date')}
            optional
            value={label.killDate}
            error={errors.killDate}
            onChange={(killDate) => onChange({ ...label, killDate })}
          />
        )}
        <DateField
          label={say('pack-date')}
          optional
          value={label.packDate}
          error={errors.packDate}
          onChange={(packDate) => onChange({ ...label, packDate })}
        />
      </Columns>
    </>
  );
}
