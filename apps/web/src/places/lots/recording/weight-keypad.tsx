import type { EnteredMass } from '@larderbook/haccp';
import { useState, type ReactNode } from 'react';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import type { NumberQuestion, UnitChoice } from '../../../ui/plausible';
import { useSay } from '../../../ui/voice';
import { enteredMass } from './mass-units';

type InUnit<Said> = Said | ((unit: string) => Said);

type WeightKeypadProps = {
  label: InUnit<string>;
  units: UnitChoice[];
  limit?: InUnit<ReactNode>;
  previous?: InUnit<ReactNode>;
  preview?: (weight: EnteredMass) => ReactNode;
  ask?: (weight: EnteredMass) => NumberQuestion | undefined;
  error?: string;
  busy?: boolean;
  saveLabel?: string;
  onSave: (weight: EnteredMass, sure: boolean) => void;
};

/** Zero is asked for again, as nothing weighs nothing. */
export function WeightKeypad({ units, preview, ask, error, onSave, ...rest }: WeightKeypadProps) {
  const say = useSay('lot-forms');
  const [entered, setEntered] = useState<Entered>({ text: '', unit: units[0]?.unit ?? 'g' });
  const [isZero, setIsZero] = useState(false);
  const value = numberOf(entered.text);
  const inUnit = <Said,>(said: InUnit<Said>): Said => (typeof said === 'function' ? (said as (unit: string) => Said)(entered.unit) : said);
  return (
    <Keypad
      {...rest}
      label={inUnit(rest.label)}
      limit={inUnit(rest.limit)}
      previous={inUnit(rest.previous)}
      units={units}
      entered={entered}
      error={isZero ? say('more-than-zero') : error}
      preview={value ? preview?.(enteredMass(value, entered.unit)) : undefined}
      ask={(typed, unit) => (typed > 0 ? ask?.(enteredMass(typed, unit)) : undefined)}
      onChange={(next) => {
        setIsZero(false);
        setEntered(next);
      }}
      onSave={({ value: kept, unit, sure }) => (kept > 0 ? onSave(enteredMass(kept, unit), sure) : setIsZero(true))}
    />
  );
}
