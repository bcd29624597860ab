import { useId, type ReactNode } from 'react';
import css from './field.module.css';
import { FaultWords } from './fault-words';
import { useSay } from './voice';

export type FieldFrame = { label: string; hint?: ReactNode; error?: string; optional?: boolean };

export type ControlProps = {
  id: string;
  'aria-invalid'?: true;
  'aria-describedby'?: string;
  className: string | undefined;
};

type FieldProps = FieldFrame & { children: (control: ControlProps) => ReactNode };

/** Ties label, hint and error to the control by ids. */
export function Field({ label, hint, error, optional = false, children }: FieldProps) {
  const say = useSay('shared');
  const id = useId();
  const [hintId, errorId] = [`${id}-hint`, `${id}-error`];
  const described = [hint ? hintId : '', error ? errorId : ''].filter(Boolean).join(' ');
  return (
    <div className={css.field} data-wrong={error ? true : undefined}>
      <label className={css.label} htmlFor={id}>
        {label}
        {optional && <span className={css.optional}> {say('optional')}</span>}
      </label>
      {children({
        id,
        'aria-invalid': error ? true : undefined,
        'aria-describedby': described || undefined,
        className: css.control,
      })}
      {hint && (
        <div className={css.hint} id={hintId}>
          {hint}
        </div>
      )}
      {error && (
        <p className={css.error} id={errorId} role="alert">
          <FaultWords said={error} />
        </p>
      )}
    </div>
  );
}
