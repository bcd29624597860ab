import { substances } from '@larderbook/contracts';
import type { CountedAs } from '@larderbook/haccp';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import { TextField } from '../../../../../ui/text-field';
import type { FieldsOf } from '../../fields-of';
import type { ConcentrationDraft } from './concentration-editor';
import css from '../../limits.module.css';

/** Some sources count the ion instead of the salt that is weighed. */
const ionOf: Partial<Record<ConcentrationDraft['substance'], CountedAs>> = {
  'sodium nitrite': 'NO₂',
  'sodium nitrate': 'NO₃',
};

/** Ingoing ppm of a restricted substance on the meat block. */
export function ConcentrationFields({ draft, errors, onChange }: FieldsOf<ConcentrationDraft>) {
  const ion = ionOf[draft.substance];
  return (
    <Stack>
      <SelectField
        label="Substance"
        choices={substances.map((value) => ({ value, name: value }))}
        value={draft.substance}
        error={errors.substance}
        onChange={(substance) => onChange({ ...draft, substance, countedAs: undefined })}
      />
      {ion && (
        <SelectField
          label="The figures are of"
          value={draft.countedAs ?? 'salt'}
          choices={[
            { value: 'salt', name: `${draft.substance}, as it is weighed` },
            { value: ion, name: `${ion} ion` },
          ]}
          onChange={(chosen) => onChange({ ...draft, countedAs: chosen === ion ? ion : undefined })}
        />
      )}
      <div className={css.pair}>
        <NumberField
          label="At least"
          optional
          unit="ppm"
          value={draft.min}
          error={errors.min}
          onChange={(min) => onChange({ ...draft, min })}
        />
        <NumberField
          label="At most"
          hint="Of the meat block, green weight."
          decimals={3}
          unit="ppm"
          value={draft.max}
          error={errors.max}
          onChange={(max) => onChange({ ...draft, max })}
        />
      </div>
      <TextField
        label="As the source prints it"
        hint="Such as “¼ oz per 100 lb (156 ppm)”. The figure above decides."
        autoComplete="off"
        value={draft.printed}
        error={errors.printed}
        onChange={(printed) => onChange({ ...draft, printed })}
      />
    </Stack>
  );
}
