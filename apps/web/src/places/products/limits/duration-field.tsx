import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import type { DurationText } from './duration-text';
import css from './limits.module.css';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

type DurationFieldProps = {
  label: string;
  hint?: string;
  value: DurationText;
  error?: string;
  optional?: boolean;
  onChange: (value: DurationText) => void;
};

const units = ['s', 'min', 'h'] as const;

export function DurationField({ label, hint, value, error, optional, onChange }: DurationFieldProps) {
  const say = useSay('limit-forms');
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
      <SelectField
        label={say('unit')}
        choices={units.map((unit) => ({ value: unit, name: say(codeOf('unit', unit)) }))}
        value={value.unit}
        onChange={(unit) => onChange({ ...value, unit })}
      />
    </div>
  );
}
