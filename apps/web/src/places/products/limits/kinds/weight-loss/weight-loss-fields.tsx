import { NumberField } from '../../../../../ui/number-field';
import type { FieldsOf } from '../../fields-of';
import type { WeightLossDraft } from './weight-loss-editor';

/** The share of the weight at the start that has to be gone. */
export function WeightLossFields({ draft, errors, onChange }: FieldsOf<WeightLossDraft>) {
  return (
    <NumberField
      label="Lost at least"
      hint="Of the weight at the start."
      decimals={2}
      unit="%"
      value={draft.percent}
      error={errors.percent}
      onChange={(percent) => onChange({ ...draft, percent })}
    />
  );
}
