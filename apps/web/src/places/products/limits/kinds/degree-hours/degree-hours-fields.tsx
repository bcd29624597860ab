import { Button } from '../../../../../ui/button';
import { CheckField } from '../../../../../ui/check-field';
import { NumberField } from '../../../../../ui/number-field';
import { SelectField } from '../../../../../ui/select-field';
import { Stack } from '../../../../../ui/stack';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import css from '../../limits.module.css';
import type { ClassDraft, DegreeHoursDraft } from './degree-hours-editor';
import { useSay } from '../../../../../ui/voice';

const units = [
  { value: '°F', name: '°F' },
  { value: '°C', name: '°C' },
] as const;

/** Degree-hours of the chamber until the pH is down, by the hottest it was. */
export function DegreeHoursFields({ draft, errors, onChange }: FieldsOf<DegreeHoursDraft>) {
  const say = useSay('limit-forms');
  const sayShared = useSay('shared');
  const { classes, unit } = draft;
  const put = (i: number, next: Partial<ClassDraft>) =>
    onChange({ ...draft, classes: classes.map((one, j) => (i === j ? { ...one, ...next } : one)) });
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
      <ol className={css.rows}>
        {classes.map((row, i) => (
          <li key={i} className={css.row}>
            <div className={css.rowHead}>
              <h3>{i === classes.length - 1 ? say('any-hotter') : say('class', { number: i + 1 })}</h3>
              {classes.length > 1 && (
                <Button
                  look="quiet"
                  aria-label={say('remove-class', { number: i + 1 })}
                  onClick={() => onChange({ ...draft, classes: classes.toSpliced(i, 1) })}
                >
                  {sayShared('remove')}
                </Button>
              )}
            </div>
            <div className={css.pair}>
              <NumberField
                label={say('hottest-chamber')}
                optional={i === classes.length - 1}
                unit={unit}
                value={row.top}
                error={errors[`classes.${i}.top.hundredths`]}
                onChange={(top) => put(i, { top })}
              />
              <NumberField
                label={say('at-most')}
                decimals={0}
                unit={`${unit}·h`}
                value={row.most}
                error={errors[`classes.${i}.most`]}
                onChange={(most) => put(i, { most })}
              />
            </div>
            {row.top !== '' && (
              <CheckField
                label={say('still-in-class', { figure: { value: row.top, unit } })}
                checked={row.isTopIncluded}
                onChange={(isTopIncluded) => put(i, { isTopIncluded })}
              />
            )}
          </li>
        ))}
      </ol>
      <Button onClick={() => onChange({ ...draft, classes: [{ top: '', isTopIncluded: false, most: '' }, ...classes] })}>
        {say('add-class')}
      </Button>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
