import { NumberField } from '../../../../../ui/number-field';
import type { FieldsOf } from '../../fields-of';
import type { WeightLossDraft } from './weight-loss-editor';
import { useSay } from '../../../../../ui/voice';

export function WeightLossFields({ draft, errors, onChange }: FieldsOf<WeightLossDraft>) {
  const say = useSay('limit-forms');
  return (
    <NumberField
      label={say('lost-at-least')}
      hint={say('of-start-weight')}
      decimals={2}
      unit="%"
      value={draft.percent}
      error={errors.percent}
      onChange={(percent) => onChange({ ...draft, percent })}
    />
  );
}
