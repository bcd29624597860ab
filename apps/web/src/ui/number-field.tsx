import { useId, type InputHTMLAttributes, type ReactNode } from 'react';
import css from './field.module.css';
import { Field, type FieldFrame } from './field';
import { tidy } from './keypad-text';

type NumberFieldProps = FieldFrame &
  Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value' | 'type'> & {
    /** As typed: read it with `numberOf`. */
    value: string;
    onChange: (value: string) => void;
    unit?: ReactNode;
    /** In sight while typing: "usually 32–45 °F". */
    usual?: string;
    decimals?: number;
    belowZero?: boolean;
  };

/** For forms; on the floor use Keypad. */
export function NumberField(props: NumberFieldProps) {
  const { label, hint, error, optional, value, onChange, unit, usual, decimals = 2, belowZero = false, ...rest } = props;
  const unitId = useId();
  const inSight =
    hint && usual ? (
      <>
        {hint} · {usual}
      </>
    ) : (
      (hint ?? usual)
    );
  return (
    <Field label={label} hint={inSight} error={error} optional={optional}>
      {(control) => (
        <div className={css.withUnit}>
          <input
            autoComplete="off"
            {...rest}
            {...control}
            className={`${control.className} ${css.figure}`}
            type="text"
            inputMode={belowZero ? 'text' : 'decimal'}
            value={value}
            aria-describedby={[unit && unitId, control['aria-describedby']].filter(Boolean).join(' ')}
            onChange={(event) => onChange(tidy(event.target.value, value, { decimals, belowZero }))}
          />
          {unit && (
            <span className={css.unit} id={unitId}>
              {unit}
            </span>
          )}
        </div>
      )}
    </Field>
  );
}
