import { mass, massUnits, type Receipt } from '@larderbook/contracts';
import type { EnteredMass, MassUnit } from '@larderbook/haccp';
import { useState } from 'react';
import { check } from '../../../api/check';
import { useShop } from '../../../api/use-shop';
import { Keypad, type Entered } from '../../../ui/keypad';
import { Question } from '../../../ui/question';
import { useFigures, useSay } from '../../../ui/voice';
import { doorScale } from './receiving-units';

type WeightQuestionProps = { before?: Receipt; weight?: EnteredMass; onWeight: (weight: EnteredMass) => void };

export function WeightQuestion({ before, weight, onWeight }: WeightQuestionProps) {
  const say = useSay('receiving');
  const sayShared = useSay('shared');
  const { quantity } = useFigures();
  const { units } = useShop();
  const scale = doorScale(units);
  const [entered, setEntered] = useState<Entered>(
    weight ? { text: String(weight.value), unit: weight.unit } : { text: '', unit: scale[0]?.unit ?? 'kg' },
  );
  const [wrong, setWrong] = useState<string>();
  const change = (next: Entered) => {
    setWrong(undefined);
    setEntered(next);
  };
  const keep = (value: number, unit: string) => {
    const { value: kept, errors } = check(mass, { value, unit });
    if (kept) onWeight({ value: kept.value, unit: massUnit(kept.unit) });
    else setWrong(Object.values(errors)[0]);
  };
  return (
    <Question title={say('weight-question')}>
      <Keypad
        label={say('weight')}
        units={scale}
        entered={entered}
        onChange={change}
        previous={before && quantity(before.weight)}
        error={wrong}
        saveLabel={sayShared('next')}
        onSave={({ value, unit }) => keep(value, unit)}
      />
    </Question>
  );
}

function massUnit(unit: string): MassUnit {
  const known = massUnits.find((each) => each === unit);
  if (!known) throw new RangeError(`${unit} is not a unit of a weight`);
  return known;
}
