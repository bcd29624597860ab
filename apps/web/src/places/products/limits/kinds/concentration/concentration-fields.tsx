import { substances } from '@larderbook/contracts';
import type { CountedAs } from '@larderbook/haccp';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import { TextField } from '../../../../../ui/text-field';
import type { FieldsOf } from '../../fields-of';
import type { ConcentrationDraft } from './concentration-editor';
import css from '../../limits.module.css';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../../../ui/voice';

/** Some sources count the ion instead of the salt that is weighed. */
const ionOf: Partial<Record<ConcentrationDraft['substance'], CountedAs>> = {
  'sodium nitrite': 'NO₂',
  'sodium nitrate': 'NO₃',
};

export function ConcentrationFields({ draft, errors, onChange }: FieldsOf<ConcentrationDraft>) {
  const say = useSay('limit-forms');
  const sayLimits = useSay('limits');
  const ion = ionOf[draft.substance];
  return (
    <Stack>
      <SelectField
        label={say('substance')}
        choices={substances.map((value) => ({ value, name: sayLimits(codeOf('substance', value)) }))}
        value={draft.substance}
        error={errors.substance}
        onChange={(substance) => onChange({ ...draft, substance, countedAs: undefined })}
      />
      {ion && (
        <SelectField
          label={say('figures-are-of')}
          value={draft.countedAs ?? 'salt'}
          choices={[
            { value: 'salt', name: say('as-weighed', { substance: draft.substance && sayLimits(codeOf('substance', draft.substance)) }) },
            { value: ion, name: say('the-ion', { ion }) },
          ]}
          onChange={(chosen) => onChange({ ...draft, countedAs: chosen === ion ? ion : undefined })}
        />
      )}
      <div className={css.pair}>
        <NumberField
          label={say('at-least')}
          optional
          unit="ppm"
          value={draft.min}
          error={errors.min}
          onChange={(min) => onChange({ ...draft, min })}
        />
        <NumberField
          label={say('at-most')}
          hint={say('of-meat-block')}
          decimals={3}
          unit="ppm"
          value={draft.max}
          error={errors.max}
          onChange={(max) => onChange({ ...draft, max })}
        />
      </div>
      <TextField
        label={say('as-printed')}
        hint={say('as-printed-hint')}
        autoComplete="off"
        value={draft.printed}
        error={errors.printed}
        onChange={(printed) => onChange({ ...draft, printed })}
      />
    </Stack>
  );
}
