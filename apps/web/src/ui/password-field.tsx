import { useState, type InputHTMLAttributes } from 'react';
import { Button } from './button';
import { Field, type FieldFrame } from './field';
import css from './field.module.css';
import { useSay } from './voice';

type PasswordFieldProps = FieldFrame &
  Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value' | 'type'> & {
    value: string;
    onChange: (value: string) => void;
  };

/** Hidden until its button is pressed: wet fingers miss keys. */
export function PasswordField({ label, hint, error, optional, onChange, ...rest }: PasswordFieldProps) {
  const say = useSay('shared');
  const [shown, setShown] = useState(false);
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {(control) => (
        <div className={css.withUnit}>
          <input
            maxLength={128}
            autoCapitalize="none"
            spellCheck={false}
            {...rest}
            {...control}
            type={shown ? 'text' : 'password'}
            onChange={(event) => onChange(event.target.value)}
          />
          <Button aria-label={say(shown ? 'hide-what-is-written' : 'show-what-is-written')} onClick={() => setShown(!shown)}>
            {say(shown ? 'hide' : 'show')}
          </Button>
        </div>
      )}
    </Field>
  );
}
