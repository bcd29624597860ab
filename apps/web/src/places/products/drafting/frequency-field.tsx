import type { ControlPoint } from '@larderbook/contracts';
import type { Frequency } from '@larderbook/haccp';
import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import limits from '../limits/limits.module.css';
import { useSay } from '../../../ui/voice';

type FrequencyFieldProps = {
  value: ControlPoint['frequency'];
  errors: FieldErrors;
  onChange: (value: ControlPoint['frequency']) => void;
};
type Counted = 'unsaid' | 'everyMinutes' | 'timesInALot';

const choices = { unsaid: 'counted-unsaid', everyMinutes: 'counted-minutes', timesInALot: 'counted-times' } as const;

/** The review says where fewer readings were taken. */
export function FrequencyField({ value, errors, onChange }: FrequencyFieldProps) {
  const say = useSay('plan-points');
  const [counted, setCounted] = useState<Counted>(() => countedIn(value));
  const [text, setText] = useState(() => textOf(value));
  const change = (now: { counted: Counted; text: string }) => {
    setCounted(now.counted);
    setText(now.text);
    onChange(frequencyOf(now));
  };
  return (
    <fieldset className={limits.group}>
      <legend className={limits.legend}>{say('fewest')}</legend>
      <p className={limits.hint}>{say('fewest-hint')}</p>
      <div className={limits.pair}>
        <SelectField
          label={say('counted')}
          choices={(Object.keys(choices) as Counted[]).map((each) => ({ value: each, name: say(choices[each]) }))}
          value={counted}
          onChange={(chosen) => change({ counted: chosen, text })}
        />
        {counted !== 'unsaid' && (
          <NumberField
            label={say(counted === 'everyMinutes' ? 'minutes-between' : 'times-in-lot')}
            value={text}
            decimals={0}
            error={errors[`frequency.${counted}`]}
            onChange={(next) => change({ counted, text: next })}
          />
        )}
      </div>
    </fieldset>
  );
}

/** Without a number it is 0, which the contract refuses beside the field when the draft is saved. */
function frequencyOf({ counted, text }: { counted: Counted; text: string }): Frequency | undefined {
  const figure = numberOf(text) ?? 0;
  if (counted === 'unsaid') return undefined;
  return counted === 'everyMinutes' ? { everyMinutes: figure } : { timesInALot: figure };
}

function countedIn(value: Frequency | undefined): Counted {
  if (!value) return 'unsaid';
  return 'everyMinutes' in value ? 'everyMinutes' : 'timesInALot';
}

function textOf(value: Frequency | undefined): string {
  const figure = value && ('everyMinutes' in value ? value.everyMinutes : value.timesInALot);
  return figure ? String(figure) : '';
}
