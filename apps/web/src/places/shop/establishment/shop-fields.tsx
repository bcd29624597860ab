import type { EstablishmentFields } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

type Named = Pick<EstablishmentFields, 'name' | 'number' | 'address'>;
type ShopFieldsProps<T extends Named> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

export function ShopFields<T extends Named>({ value, errors, onChange }: ShopFieldsProps<T>) {
  const say = useSay('shop');
  return (
    <Stack>
      <TextField
        label={say('name')}
        autoComplete="organization"
        maxLength={120}
        value={value.name}
        error={errors.name}
        onChange={(name) => onChange({ ...value, name })}
      />
      <TextField
        label={say('number')}
        optional
        hint={say('number-hint')}
        autoComplete="off"
        maxLength={40}
        value={value.number}
        error={errors.number}
        onChange={(number) => onChange({ ...value, number })}
      />
      <TextArea
        label={say('address')}
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
