import type { Surroundings } from '@larderbook/contracts';
import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { TextField } from '../../../ui/text-field';
import limits from '../limits/limits.module.css';
import { useShop } from '../../../api/use-shop';

type SurroundingsFieldProps = {
  value: Surroundings | undefined;
  errors: FieldErrors;
  onChange: (value: Surroundings | undefined) => void;
};

/** What the product lies in while it is read: it tells when the core will be there, and no limit is judged by it. */
export function SurroundingsField({ value, errors, onChange }: SurroundingsFieldProps) {
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
      <legend className={limits.legend}>What the product lies in</legend>
      <p className={limits.hint}>
        Not a limit: from it and the readings the book tells when the core will be there. It may be read too, and takes the place of the set
        point from then on.
      </p>
      <div className={limits.pair}>
        <TextField
          label="Name"
          optional
          autoComplete="off"
          maxLength={30}
          hint="Such as “Air of the blast chiller”."
          value={name}
          error={errors['surroundings.name']}
          onChange={(next) => type(next, text)}
        />
        <NumberField
          label="Set point"
          optional
          belowZero
          unit={unit}
          hint="Your shop’s own habit."
          value={text}
          error={errors['surroundings.setPoint.value']}
          onChange={(next) => type(name, next)}
        />
      </div>
    </fieldset>
  );
}
