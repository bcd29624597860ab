import { DurationField } from './duration-field';
import type { DurationText } from './duration-text';
import type { FieldsOf } from './fields-of';
import { useSay } from '../../../ui/voice';

/** A verdict over a longer gap would rest on a guess. */
export function GapField<D extends { gap: DurationText }>({ draft, errors, onChange }: FieldsOf<D>) {
  const say = useSay('limit-forms');
  return (
    <DurationField
      label={say('longest-gap')}
      hint={say('longest-gap-hint')}
      value={draft.gap}
      error={errors.longestGapSeconds}
      onChange={(gap) => onChange({ ...draft, gap })}
    />
  );
}
