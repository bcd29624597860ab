import { useState } from 'react';
import { Button } from './button';
import { ChoiceField } from './choice-field';
import css from './field.module.css';
import { Field, type FieldFrame } from './field';
import { Stack } from './stack';
import { useSay } from './voice';
import { instantsAt, wallTime } from './wall-time';

type DateTimeFieldProps = FieldFrame & {
  /** ISO 8601 with offset, or empty. */
  value: string;
  /** As in "America/Chicago". */
  zone: string;
  /** ISO 8601 with offset, or empty while what is typed is no moment. */
  onChange: (instant: string) => void;
};

/** By the clock on the shop's wall; asks which moment is meant where clocks change. */
export function DateTimeField({ label, hint, error, optional, value, zone, onChange }: DateTimeFieldProps) {
  const say = useSay('recording');
  const [noMoment, setNoMoment] = useState<string>(); // what is typed while it is half a time, or one the clock never showed
  const wall = noMoment ?? (value && wallTime(value, zone));
  const moments = instantsAt(wall, zone);
  const never = wall && moments.length === 0 ? say('never-showed', { time: wall.slice(11) }) : undefined;

  const take = (next: string) => {
    const [first] = instantsAt(next, zone);
    setNoMoment(first ? undefined : next);
    onChange(first ?? '');
  };
  return (
    <Stack gap="near">
      <Field label={label} hint={hint} error={error ?? never} optional={optional}>
        {(control) => (
          <div className={css.withUnit}>
            <input {...control} type="datetime-local" value={wall} onChange={(event) => take(event.target.value)} />
            <Button onClick={() => take(wallTime(Date.now(), zone))}>{say('now')}</Button>
          </div>
        )}
      </Field>
      {moments.length === 2 && (
        <ChoiceField
          label={say('came-twice')}
          choices={moments.map((moment, i) => ({ value: moment, name: say(i === 0 ? 'the-first' : 'the-second') }))}
          value={moments.find((moment) => Date.parse(moment) === Date.parse(value))}
          onChange={onChange}
        />
      )}
    </Stack>
  );
}
