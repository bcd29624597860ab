import { massUnits } from '@larderbook/contracts';
import type { MassUnit } from '@larderbook/haccp';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import type { BatchDraft } from './batch-draft';
import { useSay } from '../../../ui/voice';
import { percentFigure } from '../../../ui/percent-figure';

type BatchFormProps = {
  draft: BatchDraft;
  yieldPercent: number;
  errors: Record<string, string>;
  onChange: (draft: BatchDraft) => void;
};

export function BatchForm({ draft, yieldPercent, errors, onChange }: BatchFormProps) {
  const say = useSay('batches');
  return (
    <Stack>
      <ChoiceField
        label={say('begin-with')}
        value={draft.from}
        onChange={(from) => onChange({ ...draft, from })}
        choices={[
          { value: 'meat', name: say('meat-at-hand'), detail: say('as-trimmed') },
          { value: 'packages', name: say('packages-wanted'), detail: say('through-the-yield', { percent: percentFigure(yieldPercent) }) },
        ]}
      />
      {draft.from === 'meat' ? (
        <Columns least={12}>
          <NumberField
            label={say('trimmed-meat')}
            hint={say('trimmed-hint')}
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
            label={say('packages')}
            decimals={0}
            value={draft.packages}
            error={errors.packages || undefined}
            onChange={(packages) => onChange({ ...draft, packages })}
          />
          <NumberField
            label={say('net-weight')}
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
  const say = useSay('batches');
  const choices = massUnits.map((unit) => ({ value: unit, name: unit }));
  return <SelectField label={say('unit')} choices={choices} value={value} onChange={onChange} />;
}
