import { ChoiceField } from '../../../../../ui/choice-field';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import type { FreezingDraft } from './freezing-editor';
import { useSay } from '../../../../../ui/voice';

/** Freezing is against trichinae in pork. */
export function FreezingFields({ draft, errors, onChange }: FieldsOf<FreezingDraft>) {
  const say = useSay('limit-forms');
  return (
    <Stack>
      <ChoiceField
        label={say('what-is-read')}
        value={draft.by}
        onChange={(by) => onChange({ ...draft, by })}
        choices={[
          { value: 'centre', name: say('read-centre') },
          { value: 'freezer', name: say('read-freezer') },
        ]}
      />
      {draft.by === 'freezer' && (
        <div className={css.pair}>
          <NumberField
            label={say('thickness')}
            hint={say('thickness-hint')}
            value={draft.thickness}
            error={errors['read.thickness.value']}
            onChange={(thickness) => onChange({ ...draft, thickness })}
          />
          <SelectField
            label={say('unit')}
            choices={[
              { value: 'in', name: say('unit-in') },
              { value: 'cm', name: say('unit-cm') },
            ]}
            value={draft.unit}
            onChange={(unit) => onChange({ ...draft, unit })}
          />
        </div>
      )}
      <p className={css.hint}>{say('freezing-table')}</p>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
