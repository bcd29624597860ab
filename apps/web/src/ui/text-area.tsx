import type { TextareaHTMLAttributes } from 'react';
import { Field, type FieldFrame } from './field';

type TextAreaProps = FieldFrame &
  Omit<TextareaHTMLAttributes<HTMLTextAreaElement>, 'onChange' | 'value'> & {
    value: string;
    onChange: (value: string) => void;
  };

export function TextArea({ label, hint, error, optional, onChange, ...rest }: TextAreaProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => <textarea rows={3} {...rest} {...control} onChange={(event) => onChange(event.target.value)} />}
    </Field>
  );
}
