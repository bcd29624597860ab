import type { Surroundings } from '@larderbook/contracts';
import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { TextField } from '../../../ui/text-field';
import limits from '../limits/limits.module.css';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';

type SurroundingsFieldProps = {
  value: Surroundings | undefined;
  errors: FieldErrors;
  onChange: (value: Surroundings | undefined) => void;
};

/** Surroundings tell when the core will be there; no limit is judged by them. */
export function SurroundingsField({ value, errors, onChange }: SurroundingsFieldProps) {
  const say = useSay('plan-points');
  const { degrees } = useShop();
  const unit = value?.setPoint?.unit ?? degrees;
  const [name, setName] = useState(value?.name ?? '');
  const [text, setText] = useState(value?.setPoint ? String(value.setPoint.value) : '');
  const type = (nextName: string, nextText: string) => {
    setName(nextName);
    setText(nextText);
    const degreesSet = numberOf(nextText);
    const setPoint = degreesSet === undefined ? undefined : { value: degreesSet, unit };
    onChange(nextName.trim() || setPoint ? { name: nextName, setPoint } : undefined);
  };
  return (
    <fieldset className={limits.group}>
      <legend className={limits.legend}>{say('surroundings')}</legend>
      <p className={limits.hint}>{say('surroundings-hint')}</p>
      <div className={limits.pair}>
        <TextField
          label={say('surroundings-name')}
          optional
          autoComplete="off"
          maxLength={30}
          hint={say('surroundings-name-hint')}
          value={name}
          error={errors['surroundings.name']}
          onChange={(next) => type(next, text)}
        />
        <NumberField
          label={say('set-point')}
          optional
          belowZero
          unit={unit}
          hint={say('set-point-hint')}
          value={text}
          error={errors['surroundings.setPoint.value']}
          onChange={(next) => type(name, next)}
        />
      </div>
    </fieldset>
  );
}
