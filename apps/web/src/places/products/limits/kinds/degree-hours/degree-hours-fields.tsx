import { Button } from '../../../../../ui/button';
import { CheckField } from '../../../../../ui/check-field';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import { NumberedRows } from '../../numbered-rows';
import type { DegreeHoursDraft } from './degree-hours-editor';
import { useSay } from '../../../../../ui/voice';

const units = [
  { value: '°F', name: '°F' },
  { value: '°C', name: '°C' },
] as const;

export function DegreeHoursFields({ draft, errors, onChange }: FieldsOf<DegreeHoursDraft>) {
  const say = useSay('limit-forms');
  const { classes, unit } = draft;
  return (
    <Stack>
      <SelectField label={say('figures-in')} choices={[...units]} value={unit} onChange={(next) => onChange({ ...draft, unit: next })} />
      <div className={css.pair}>
        <NumberField
          label={say('counted-over')}
          unit={unit}
          value={draft.base}
          error={errors['base.hundredths'] ?? errors.base}
          onChange={(base) => onChange({ ...draft, base })}
        />
        <NumberField
          label={say('until-ph')}
          decimals={2}
          unit="pH"
          value={draft.pH}
          error={errors['pH.thousandths']}
          onChange={(pH) => onChange({ ...draft, pH })}
        />
      </div>
      <NumberedRows
        rows={classes}
        title={(number) => (number === classes.length ? say('any-hotter') : say('class', { number }))}
        removeLabel={(number) => say('remove-class', { number })}
        onChange={(next) => onChange({ ...draft, classes: next })}
      >
        {(row, i, put) => (
          <>
            <div className={css.pair}>
              <NumberField
                label={say('hottest-chamber')}
                optional={i === classes.length - 1}
                unit={unit}
                value={row.top}
                error={errors[`classes.${i}.top.hundredths`]}
                onChange={(top) => put({ ...row, top })}
              />
              <NumberField
                label={say('at-most')}
                decimals={0}
                unit={`${unit}·h`}
                value={row.most}
                error={errors[`classes.${i}.most`]}
                onChange={(most) => put({ ...row, most })}
              />
            </div>
            {row.top !== '' && (
              <CheckField
                label={say('still-in-class', { figure: { value: row.top, unit } })}
                checked={row.isTopIncluded}
                onChange={(isTopIncluded) => put({ ...row, isTopIncluded })}
              />
            )}
          </>
        )}
      </NumberedRows>
      <Button onClick={() => onChange({ ...draft, classes: [{ top: '', isTopIncluded: false, most: '' }, ...classes] })}>
        {say('add-class')}
      </Button>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
