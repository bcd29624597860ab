import type { EstablishmentFields } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';

type Named = Pick<EstablishmentFields, 'name' | 'number' | 'address'>;
type ShopFieldsProps<T extends Named> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

/** Name, number and address of the establishment. */
export function ShopFields<T extends Named>({ value, errors, onChange }: ShopFieldsProps<T>) {
  return (
    <Stack>
      <TextField
        label="Name of the establishment"
        autoComplete="organization"
        maxLength={120}
        value={value.name}
        error={errors.name}
        onChange={(name) => onChange({ ...value, name })}
      />
      <TextField
        label="Establishment number"
        optional
        hint="From your grant of inspection, such as “Est. 00417-D”. Leave it empty if you have none."
        autoComplete="off"
        maxLength={40}
        value={value.number}
        error={errors.number}
        onChange={(number) => onChange({ ...value, number })}
      />
      <TextArea
        label="Address"
        optional
        autoComplete="street-address"
        maxLength={400}
        rows={2}
        value={value.address}
        error={errors.address}
        onChange={(address) => onChange({ ...value, address })}
      />
    </Stack>
  );
}
