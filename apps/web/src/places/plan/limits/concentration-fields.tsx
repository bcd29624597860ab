import { substances } from '@larderbook/contracts';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import type { FieldsOf } from './fields-of';
import type { ConcentrationDraft } from './limit-draft';
import css from './limits.module.css';

/** Ingoing ppm of a restricted substance on the meat block. */
export function ConcentrationFields({ draft, errors, onChange }: FieldsOf<ConcentrationDraft>) {
  return (
    <Stack>
      <SelectField
        label="Substance" choices={substances.map((value) => ({ value, name: value }))}
        value={draft.substance} error={errors.substance} onChange={(substance) => onChange({ ...draft, substance })}
      />
      <div className={css.pair}>
        <NumberField
          label="At least" optional unit="ppm" value={draft.min} error={errors.min}
          onChange={(min) => onChange({ ...draft, min })}
        />
        <NumberField
          label="At most" hint="Of the meat block, green weight." decimals={3} unit="ppm" value={draft.max}
          error={errors.max} onChange={(max) => onChange({ ...draft, max })}
        />
      </div>
      <TextField
        label="As the source prints it" hint="Such as “¼ oz per 100 lb (156 ppm)”. The figure above decides."
        autoComplete="off"
        value={draft.printed} error={errors.printed} onChange={(printed) => onChange({ ...draft, printed })}
      />
    </Stack>
  );
}
