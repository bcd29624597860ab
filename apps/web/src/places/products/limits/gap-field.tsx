import { DurationField } from './duration-field';
import type { DurationText } from './duration-text';
import type { FieldsOf } from './fields-of';

/** How far two readings may lie apart before the verdict would rest on a guess. */
export function GapField<D extends { gap: DurationText }>({ draft, errors, onChange }: FieldsOf<D>) {
  return (
    <DurationField
      label="Longest time without a reading"
      hint="A longer gap leaves the verdict undetermined. Your plan may be stricter than the source."
      value={draft.gap}
      error={errors.longestGapSeconds}
      onChange={(gap) => onChange({ ...draft, gap })}
    />
  );
}
