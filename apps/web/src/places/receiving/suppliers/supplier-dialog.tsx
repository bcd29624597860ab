import { recordSupplier, supplierFields } from '@larderbook/contracts';
import { useState } from 'react';
import { check } from '../../../api/check';
import { useRecording } from '../../../outbox/use-recording';
import { FormDialog } from '../../../ui/form-dialog';
import { useSay } from '../../../ui/voice';
import type { Supplier } from '../known';
import { emptySupplier, SupplierFields, type SupplierDraft } from './supplier-fields';

type SupplierDialogProps = { supplier?: Supplier; onSaved?: (supplier: Supplier) => void; onClose: () => void };

/** On the driver's first visit there may be no signal: the supplier is kept here and sent before the delivery. */
export function SupplierDialog({ supplier, onSaved, onClose }: SupplierDialogProps) {
  const say = useSay('items');
  const recording = useRecording(recordSupplier);
  const [draft, setDraft] = useState<SupplierDraft>({
    ...emptySupplier,
    ...supplier,
    establishmentNumber: supplier?.establishmentNumber ?? '',
  });
  const [errors, setErrors] = useState<Record<string, string>>({});
  const save = async () => {
    const checked = check(supplierFields, { ...draft, establishmentNumber: draft.establishmentNumber || undefined });
    setErrors(checked.errors ?? {});
    if (!checked.value) return;
    const supplierId = recording.id;
    const saved = await recording.save(
      { supplierId, ...checked.value, amends: supplier?.supplierId },
      say('name-supplier', { name: checked.value.name }),
    );
    if (!saved) return;
    onClose();
    onSaved?.({ ...checked.value, supplierId: supplier?.supplierId ?? supplierId });
  };
  const shown = { ...recording.refused?.fields, ...errors };
  return (
    <FormDialog
      title={supplier ? say('correct-named', { name: supplier.name }) : say('add-supplier')}
      errors={shown}
      problem={recording.refused && Object.keys(recording.refused.fields).length === 0 ? { title: recording.refused.words } : undefined}
      busy={recording.busy}
      onSave={() => void save()}
      onClose={onClose}
    >
      <SupplierFields draft={draft} errors={shown} onChange={setDraft} />
    </FormDialog>
  );
}
