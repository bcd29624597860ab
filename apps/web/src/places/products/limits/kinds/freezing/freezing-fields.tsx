import { ChoiceField } from '../../../../../ui/choice-field';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import type { FreezingDraft } from './freezing-editor';

/** Pork frozen against trichinae by the printed rows. */
export function FreezingFields({ draft, errors, onChange }: FieldsOf<FreezingDraft>) {
  return (
    <Stack>
      <ChoiceField
        label="What is read"
        value={draft.by}
        onChange={(by) => onChange({ ...draft, by })}
        choices={[
          { value: 'centre', name: 'The centre of the meat' },
          { value: 'freezer', name: 'The air of the freezer' },
        ]}
      />
      {draft.by === 'freezer' && (
        <div className={css.pair}>
          <NumberField
            label="Thickness"
            hint="Of the piece, or of the layer, box or block it is frozen in."
            value={draft.thickness}
            error={errors['read.thickness.value']}
            onChange={(thickness) => onChange({ ...draft, thickness })}
          />
          <SelectField
            label="Unit"
            choices={[
              { value: 'in', name: 'inches' },
              { value: 'cm', name: 'centimetres' },
            ]}
            value={draft.unit}
            onChange={(unit) => onChange({ ...draft, unit })}
          />
        </div>
      )}
      <p className={css.hint}>
        The table was prescribed until 2018 and is used as support since; it was read in copies and is not confirmed.
      </p>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
