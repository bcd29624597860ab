import type { Measured } from '@larderbook/haccp';
import { CheckField } from '../../../../../ui/check-field';
import { ChoiceField, type Tile } from '../../../../../ui/choice-field';
import { NumberField } from '../../../../../ui/number-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import type { BoundText, RangeDraft } from './range-editor';
import css from '../../limits.module.css';
import { PrintedField } from '../../printed-field';

const measured: Tile<Measured>[] = [
  {
    value: 'temperature',
    name: 'Temperature',
  },
  { value: 'pH', name: 'pH' },
  { value: 'aw', name: 'Water activity' },
  { value: 'percent', name: 'Percentage' },
];

/** At least, at most, or both; the figures themselves are within unless the source says “above” or “less than”. */
export function RangeFields({ draft, errors, onChange }: FieldsOf<RangeDraft>) {
  return (
    <Stack>
      <ChoiceField
        label="What is measured"
        choices={measured}
        value={draft.measured}
        onChange={(chosen) => onChange({ ...draft, measured: chosen })}
      />
      {draft.measured === 'temperature' ? (
        <>
          <PrintedField
            label="At least"
            hint="Leave both empty where there is no least."
            value={draft.min}
            error={errors.min}
            onChange={(min) => onChange({ ...draft, min: { ...draft.min, ...min } })}
          />
          <PrintedField
            label="At most"
            hint="Leave both empty where there is no most."
            value={draft.max}
            error={errors.max}
            onChange={(max) => onChange({ ...draft, max: { ...draft.max, ...max } })}
          />
        </>
      ) : (
        <div className={css.pair}>
          <Plain
            label="At least"
            bound={draft.min}
            error={errors.min}
            unit={units[draft.measured]}
            onChange={(min) => onChange({ ...draft, min })}
          />
          <Plain
            label="At most"
            bound={draft.max}
            error={errors.max}
            unit={units[draft.measured]}
            onChange={(max) => onChange({ ...draft, max })}
          />
        </div>
      )}
      <div className={css.pair}>
        <CheckField
          label="The least itself is outside"
          detail="> instead of ≥: the source says “above”."
          checked={draft.signs?.min !== undefined}
          onChange={(isStrict) => onChange({ ...draft, signs: { ...draft.signs, min: isStrict ? '>' : undefined } })}
        />
        <CheckField
          label="The most itself is outside"
          detail="< instead of ≤: the source says “less than”."
          checked={draft.signs?.max !== undefined}
          onChange={(isStrict) => onChange({ ...draft, signs: { ...draft.signs, max: isStrict ? '<' : undefined } })}
        />
      </div>
    </Stack>
  );
}

const units: Record<Exclude<Measured, 'temperature'>, string> = { pH: 'pH', aw: 'aw', percent: '%' };

type PlainProps = {
  label: string;
  bound: BoundText;
  error: string | undefined;
  unit: string;
  onChange: (bound: BoundText) => void;
};

function Plain({ label, bound, error, unit, onChange }: PlainProps) {
  return (
    <NumberField
      label={label}
      optional
      decimals={3}
      unit={unit}
      value={bound.number}
      error={error}
      onChange={(number) => onChange({ ...bound, number })}
    />
  );
}
