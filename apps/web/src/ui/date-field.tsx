import type { InputHTMLAttributes } from 'react';
import { Field, type FieldFrame } from './field';

type DateFieldProps = FieldFrame &
  Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value' | 'type'> & {
    /** "2026-03-08", or empty. */
    value: string;
    onChange: (date: string) => void;
  };

/** No time and no zone. */
export function DateField({ label, hint, error, optional, onChange, ...rest }: DateFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => <input {...rest} {...control} type="date" onChange={(event) => onChange(event.target.value)} />}
    </Field>
  );
}
