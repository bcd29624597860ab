import { FaultWords } from '../../../ui/fault-words';
import { NumberField } from '../../../ui/number-field';
import type { PrintedText } from './typed';
import css from './limits.module.css';

type PrintedFieldProps = {
  label: string;
  hint?: string;
  value: PrintedText;
  error?: string;
  onChange: (value: PrintedText) => void;
};

/** In °F, °C or both; a reading is compared in its own unit. */
export function PrintedField({ label, hint, value, error, onChange }: PrintedFieldProps) {
  return (
    <fieldset className={css.group} data-wrong={error ? true : undefined}>
      <legend className={css.legend}>{label}</legend>
      {hint && <p className={css.hint}>{hint}</p>}
      <div className={css.pair}>
        {(['°F', '°C'] as const).map((unit) => (
          <NumberField key={unit} label={unit} belowZero value={value[unit]} onChange={(text) => onChange({ ...value, [unit]: text })} />
        ))}
      </div>
      {error && (
        <p className={css.fault} role="alert">
          <FaultWords said={error} />
        </p>
      )}
    </fieldset>
  );
}
