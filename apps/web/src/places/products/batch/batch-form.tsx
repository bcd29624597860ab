import { massUnits } from '@larderbook/contracts';
import type { MassUnit } from '@larderbook/haccp';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import type { BatchDraft } from './batch-draft';

type BatchFormProps = {
  draft: BatchDraft;
  yieldSaid: string;
  errors: Record<string, string>;
  onChange: (draft: BatchDraft) => void;
};

/** From the meat that is there, or back from the packages that are wanted. */
export function BatchForm({ draft, yieldSaid, errors, onChange }: BatchFormProps) {
  return (
    <Stack>
      <ChoiceField
        label="Work it out from"
        value={draft.from}
        onChange={(from) => onChange({ ...draft, from })}
        choices={[
          { value: 'meat', name: 'The meat at hand', detail: 'weighed as trimmed' },
          { value: 'packages', name: 'The packages wanted', detail: `back through the yield of ${yieldSaid}` },
        ]}
      />
      {draft.from === 'meat' ? (
        <Columns least={12}>
          <NumberField
            label="Trimmed meat"
            hint="After boning and trimming, not as bought."
            decimals={3}
            value={draft.trimmed}
            error={errors.trimmed || undefined}
            onChange={(trimmed) => onChange({ ...draft, trimmed })}
          />
          <UnitField value={draft.trimmedUnit} onChange={(trimmedUnit) => onChange({ ...draft, trimmedUnit })} />
        </Columns>
      ) : (
        <Columns least={12}>
          <NumberField
            label="Packages"
            decimals={0}
            value={draft.packages}
            error={errors.packages || undefined}
            onChange={(packages) => onChange({ ...draft, packages })}
          />
          <NumberField
            label="Net weight of one"
            decimals={3}
            value={draft.net}
            error={errors.net || undefined}
            onChange={(net) => onChange({ ...draft, net })}
          />
          <UnitField value={draft.netUnit} onChange={(netUnit) => onChange({ ...draft, netUnit })} />
        </Columns>
      )}
    </Stack>
  );
}

function UnitField({ value, onChange }: { value: MassUnit; onChange: (unit: MassUnit) => void }) {
  const choices = massUnits.map((unit) => ({ value: unit, name: unit }));
  return <SelectField label="Unit" choices={choices} value={value} onChange={onChange} />;
}
