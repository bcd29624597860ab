import { useId, type ReactNode } from 'react';
import css from './choice-field.module.css';
import checkCss from './check-field.module.css';
import fieldCss from './field.module.css';
import { FaultWords } from './fault-words';

type CheckFieldProps = {
  label: string;
  detail?: ReactNode;
  error?: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
};

/** A tile of at least 56 px. */
export function CheckField({ label, detail, error, checked, onChange }: CheckFieldProps) {
  const errorId = useId();
  return (
    <div className={css.field} data-wrong={error ? true : undefined}>
      <label className={css.tile}>
        <input
          type="checkbox"
          className={css.radio}
          checked={checked}
          aria-invalid={error ? true : undefined}
          aria-describedby={error ? errorId : undefined}
          onChange={(event) => onChange(event.target.checked)}
        />
        <span className={checkCss.box} aria-hidden="true" />
        <span>
          <span className={css.name}>{label}</span>
          {detail && <span className={css.detail}>{detail}</span>}
        </span>
      </label>
      {error && (
        <p className={fieldCss.error} id={errorId} role="alert">
          <FaultWords said={error} />
        </p>
      )}
    </div>
  );
}
