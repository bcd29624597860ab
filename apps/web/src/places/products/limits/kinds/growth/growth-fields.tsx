import { GROWTH_AT_OPTION_1, SCREEN_DEVIATIONS_FIRST } from '@larderbook/haccp';
import { Caution } from '../../../../../ui/caution';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import type { GrowthDraft } from './growth-editor';

const species = (['beef', 'chicken', 'pork', 'mixed or unknown'] as const).map((value) => ({ value, name: value }));

/** Predicted growth while cooling: a screening beside a cooling limit. */
export function GrowthFields({ draft, errors, onChange }: FieldsOf<GrowthDraft>) {
  return (
    <Stack>
      <Caution>
        <p>{SCREEN_DEVIATIONS_FIRST}</p>
        <p>{GROWTH_AT_OPTION_1}</p>
      </Caution>
      <p className={css.hint}>Clostridium perfringens, as in cooked meat without cure. It stands beside a cooling limit.</p>
      <SelectField label="Meat" choices={species} value={draft.species} onChange={(one) => onChange({ ...draft, species: one })} />
      <NumberField
        label="At most"
        decimals={2}
        unit="log"
        value={draft.log10}
        error={errors.log10}
        onChange={(log10) => onChange({ ...draft, log10 })}
      />
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
