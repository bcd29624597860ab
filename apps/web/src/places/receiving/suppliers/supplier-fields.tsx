import type { FieldErrors } from '../../../api/check';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

export type SupplierDraft = { name: string; establishmentNumber: string; address: string; contact: string };

export const emptySupplier: SupplierDraft = { name: '', establishmentNumber: '', address: '', contact: '' };

type SupplierFieldsProps = { draft: SupplierDraft; errors: FieldErrors; onChange: (draft: SupplierDraft) => void };

export function SupplierFields({ draft, errors, onChange }: SupplierFieldsProps) {
  const say = useSay('items');
  return (
    <>
      <TextField
        label={say('name')}
        maxLength={120}
        autoComplete="off"
        value={draft.name}
        error={errors.name}
        onChange={(name) => onChange({ ...draft, name })}
      />
      <TextField
        label={say('establishment-number')}
        optional
        hint={say('number-hint')}
        maxLength={40}
        autoComplete="off"
        value={draft.establishmentNumber}
        error={errors.establishmentNumber}
        onChange={(establishmentNumber) => onChange({ ...draft, establishmentNumber })}
      />
      <TextField
        label={say('address')}
        optional
        maxLength={400}
        autoComplete="off"
        value={draft.address}
        error={errors.address}
        onChange={(address) => onChange({ ...draft, address })}
      />
      <TextField
        label={say('contact')}
        optional
        hint={say('contact-hint')}
        maxLength={200}
        autoComplete="off"
        value={draft.contact}
        error={errors.contact}
        onChange={(contact) => onChange({ ...draft, contact })}
      />
    </>
  );
}
