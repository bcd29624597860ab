import type { Measured } from '@larderbook/haccp';
import { CheckField } from '../../../../../ui/check-field';
import { ChoiceField } from '../../../../../ui/choice-field';
import { NumberField } from '../../../../../ui/number-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import type { BoundText, RangeDraft } from './range-editor';
import css from '../../limits.module.css';
import { PrintedField } from '../../printed-field';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../../../ui/voice';

const measured = ['temperature', 'pH', 'aw', 'percent'] as const satisfies Measured[];

/** The figures themselves are within unless the source says “above” or “less than”. */
export function RangeFields({ draft, errors, onChange }: FieldsOf<RangeDraft>) {
  const say = useSay('limit-forms');
  return (
    <Stack>
      <ChoiceField
        label={say('what-is-measured')}
        choices={measured.map((value) => ({ value, name: say(codeOf('measured', value)) }))}
        value={draft.measured}
        onChange={(chosen) => onChange({ ...draft, measured: chosen })}
      />
      {draft.measured === 'temperature' ? (
        <>
          <PrintedField
            label={say('at-least')}
            hint={say('no-least')}
            value={draft.min}
            error={errors.min}
            onChange={(min) => onChange({ ...draft, min: { ...draft.min, ...min } })}
          />
          <PrintedField
            label={say('at-most')}
            hint={say('no-most')}
            value={draft.max}
            error={errors.max}
            onChange={(max) => onChange({ ...draft, max: { ...draft.max, ...max } })}
          />
        </>
      ) : (
        <div className={css.pair}>
          <Plain
            label={say('at-least')}
            bound={draft.min}
            error={errors.min}
            unit={units[draft.measured]}
            onChange={(min) => onChange({ ...draft, min })}
          />
          <Plain
            label={say('at-most')}
            bound={draft.max}
            error={errors.max}
            unit={units[draft.measured]}
            onChange={(max) => onChange({ ...draft, max })}
          />
        </div>
      )}
      <div className={css.pair}>
        <CheckField
          label={say('least-outside')}
          detail={say('least-outside-detail')}
          checked={draft.signs?.min !== undefined}
          onChange={(isStrict) => onChange({ ...draft, signs: { ...draft.signs, min: isStrict ? '>' : undefined } })}
        />
        <CheckField
          label={say('most-outside')}
          detail={say('most-outside-detail')}
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
