import { useState, type InputHTMLAttributes } from 'react';
import { Button } from './button';
import { Field, type FieldFrame } from './field';
import css from './field.module.css';

type PasswordFieldProps = FieldFrame & Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value' | 'type'> & {
  value: string;
  onChange: (value: string) => void;
};

/** A password, hidden until its button is pressed: wet fingers miss keys. */
export function PasswordField({ label, hint, error, optional, onChange, ...rest }: PasswordFieldProps) {
  const [shown, setShown] = useState(false);
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => (
        <div className={css.withUnit}>
          <input
            maxLength={128} autoCapitalize="none" spellCheck={false} {...rest} {...control}
            type={shown ? 'text' : 'password'} onChange={(event) => onChange(event.target.value)}
          />
          <Button aria-label={shown ? 'Hide what is written' : 'Show what is written'} onClick={() => setShown(!shown)}>{shown ? 'Hide' : 'Show'}</Button>
        </div>
      )}
    </Field>
  );
}
