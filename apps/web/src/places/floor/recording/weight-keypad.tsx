import type { EnteredMass } from '@larderbook/haccp';
import { useState, type ReactNode } from 'react';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import type { UnitChoice } from '../../../ui/plausible';
import { enteredMass } from './mass-units';

type WeightKeypadProps = {
  label: string;
  units: UnitChoice[];
  limit?: ReactNode;
  previous?: ReactNode;
  /** What the weight on the display would do. */
  preview?: (weight: EnteredMass) => ReactNode;
  error?: string;
  busy?: string | false;
  saveLabel?: string;
  onSave: (weight: EnteredMass) => void;
};

/** A weight from a scale. Nothing weighs nothing: zero is asked for again. */
export function WeightKeypad({ units, preview, error, onSave, ...rest }: WeightKeypadProps) {
  const [entered, setEntered] = useState<Entered>({ text: '', unit: units[0]?.unit ?? 'g' });
  const [isZero, setIsZero] = useState(false);
  const value = numberOf(entered.text);
  return (
    <Keypad
      {...rest}
      units={units}
      entered={entered}
      error={isZero ? 'A weight is more than zero.' : error}
      preview={value ? preview?.(enteredMass(value, entered.unit)) : undefined}
      onChange={(next) => {
        setIsZero(false);
        setEntered(next);
      }}
      onSave={(kept) => (kept.value > 0 ? onSave(enteredMass(kept.value, kept.unit)) : setIsZero(true))}
    />
  );
}
