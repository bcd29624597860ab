import { plainUnits } from '@larderbook/contracts';
import { CheckField } from '../../../../../ui/check-field';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import { TextField } from '../../../../../ui/text-field';
import type { FieldsOf } from '../../fields-of';
import css from '../../limits.module.css';
import type { FigureDraft } from './figure-editor';
import { useSay } from '../../../../../ui/voice';

export function FigureFields({ draft, errors, onChange }: FieldsOf<FigureDraft>) {
  const say = useSay('limit-forms');
  const { min, max, signs = {} } = draft;
  const strictly = (next: typeof signs) => onChange({ ...draft, printed: undefined, signs: { ...signs, ...next } });
  const units = plainUnits.some((unit) => unit === draft.unit) ? plainUnits : [draft.unit, ...plainUnits];
  return (
    <Stack>
      <TextField
        label={say('what-compared')}
        hint={say('what-compared-hint')}
        autoComplete="off"
        value={draft.of}
        error={errors.of}
        onChange={(of) => onChange({ ...draft, of, printed: undefined })}
      />
      <SelectField
        label={say('unit')}
        choices={units.map((value) => ({ value, name: value }))}
        value={draft.unit}
        onChange={(unit) => onChange({ ...draft, unit, printed: undefined })}
      />
      <div className={css.pair}>
        <NumberField
          label={say('at-least')}
          optional
          decimals={3}
          unit={draft.unit}
          value={min}
          error={errors.min}
          onChange={(least) => onChange({ ...draft, min: least, printed: undefined })}
        />
        <NumberField
          label={say('at-most')}
          optional
          decimals={3}
          unit={draft.unit}
          value={max}
          error={errors.max}
          onChange={(most) => onChange({ ...draft, max: most, printed: undefined })}
        />
      </div>
      {min !== '' && (
        <CheckField
          label={say('itself-outside', { figure: min })}
          checked={signs.min !== undefined}
          onChange={(strict) => strictly({ min: strict ? '>' : undefined })}
        />
      )}
      {max !== '' && (
        <CheckField
          label={say('itself-outside', { figure: max })}
          checked={signs.max !== undefined}
          onChange={(strict) => strictly({ max: strict ? '<' : undefined })}
        />
      )}
    </Stack>
  );
}
