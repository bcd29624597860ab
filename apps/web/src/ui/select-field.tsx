import type { SelectHTMLAttributes } from 'react';
import { Field, type FieldFrame } from './field';
import { useSay } from './voice';

export type Choice<V extends string = string> = { value: V; name: string };

export type SelectFieldProps<V extends string> = FieldFrame &
  Omit<SelectHTMLAttributes<HTMLSelectElement>, 'onChange' | 'value' | 'children'> & {
    choices: Choice<V>[];
    value: V | '';
    onChange: (value: V) => void;
    placeholder?: string;
  };

/** For up to five choices prefer ChoiceField. Nothing is chosen until the person chooses. */
export function SelectField<V extends string>(props: SelectFieldProps<V>) {
  const { label, hint, error, optional, choices, onChange, placeholder, ...rest } = props;
  const say = useSay('shared');
  const choose = (value: string) => {
    const chosen = choices.find((choice) => choice.value === value);
    if (chosen) onChange(chosen.value);
  };
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => (
        <select {...rest} {...control} onChange={(event) => choose(event.target.value)}>
          <option value="" disabled>
            {placeholder ?? say('choose-one')}
          </option>
          {choices.map(({ value, name }) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
