import type { InputHTMLAttributes } from 'react';
import { Field, type FieldFrame } from './field';

type TextFieldProps = FieldFrame &
  Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value'> & {
    value: string;
    onChange: (value: string) => void;
  };

/** `type`, `autoComplete`, `maxLength` and the like pass through. */
export function TextField({ label, hint, error, optional, onChange, ...rest }: TextFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => <input type="text" {...rest} {...control} onChange={(event) => onChange(event.target.value)} />}
    </Field>
  );
}
