import { Caution } from '../../../../../ui/caution';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import type { GrowthDraft } from './growth-editor';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../../../ui/voice';

const species = ['beef', 'chicken', 'pork', 'mixed or unknown'] as const;

export function GrowthFields({ draft, errors, onChange }: FieldsOf<GrowthDraft>) {
  const say = useSay('limit-forms');
  return (
    <Stack>
      <Caution>
        <p>{say('screen-deviations-first')}</p>
        <p>{say('growth-at-option-1')}</p>
      </Caution>
      <p className={css.hint}>{say('growth-beside-cooling')}</p>
      <SelectField
        label={say('meat')}
        choices={species.map((value) => ({ value, name: say(codeOf('meat', value)) }))}
        value={draft.species}
        onChange={(one) => onChange({ ...draft, species: one })}
      />
      <NumberField
        label={say('at-most')}
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
