import { lethalitySets } from '@larderbook/haccp';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import { TextArea } from '../../../../../ui/text-area';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import { PrintedField } from '../../printed-field';
import type { LethalityDraft } from './lethality-editor';
import { useLimits } from '../../../../../ui/use-tell';
import { useSay } from '../../../../../ui/voice';

/** A mean of many studies decides nothing, so it is not offered. */
const sets = lethalitySets.filter(({ use }) => use !== 'mean');

/** An authority must support the process. */
export function LethalityFields({ draft, errors, onChange }: FieldsOf<LethalityDraft>) {
  const say = useSay('limit-forms');
  const { saySet, sayName } = useLimits();
  const { set } = draft;
  const known = sets.some(({ name }) => name === set.name) ? sets : [set, ...sets];
  return (
    <Stack>
      <SelectField
        label={say('organism')}
        choices={known.map((one) => ({ value: one.name, name: saySet(one) }))}
        value={set.name}
        onChange={(name) => onChange({ ...draft, set: known.find((one) => one.name === name) ?? set })}
      />
      <p className={css.hint}>
        {say('law-of-set', {
          minutes: { value: String(Number(set.minutesPerLog.toPrecision(4))), unit: 'min' },
          reference: { value: String(set.referenceCelsius), unit: '°C' },
          z: { value: String(set.zCelsius), unit: '°C' },
          note: sayName(set.note),
        })}
      </p>
      <NumberField
        label={say('at-least')}
        decimals={2}
        unit="log"
        value={draft.log10}
        error={errors.log10}
        onChange={(log10) => onChange({ ...draft, log10 })}
      />
      <PrintedField
        label={say('counted-from')}
        hint={say('nothing-colder')}
        value={draft.floor}
        error={errors.floor}
        onChange={(floor) => onChange({ ...draft, floor })}
      />
      <TextArea
        label={say('authority')}
        hint={say('authority-hint')}
        rows={2}
        value={draft.authority}
        error={errors.authority}
        onChange={(authority) => onChange({ ...draft, authority })}
      />
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
