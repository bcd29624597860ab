import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import type { DurationText } from './duration-text';
import css from './limits.module.css';

type DurationFieldProps = {
  label: string;
  hint?: string;
  value: DurationText;
  error?: string;
  optional?: boolean;
  onChange: (value: DurationText) => void;
};

const units = [
  { value: 's', name: 'seconds' },
  { value: 'min', name: 'minutes' },
  { value: 'h', name: 'hours' },
] as const;

/** A length of time: a number and its unit. */
export function DurationField({ label, hint, value, error, optional, onChange }: DurationFieldProps) {
  return (
    <div className={css.pair}>
      <NumberField
        label={label}
        hint={hint}
        optional={optional}
        value={value.amount}
        error={error}
        onChange={(amount) => onChange({ ...value, amount })}
      />
      <SelectField label="Unit" choices={[...units]} value={value.unit} onChange={(unit) => onChange({ ...value, unit })} />
    </div>
  );
}
