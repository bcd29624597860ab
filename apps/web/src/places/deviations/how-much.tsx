import { massOf, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { Keypad, type Entered } from '../../ui/keypad';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { weightOf } from './weights';

type HowMuchProps = {
  title: string;
  most: EnteredMass;
  onBack: () => void;
  onWeight: (weight: EnteredMass) => void;
  onClose: () => void;
};

export function HowMuch({ title, most, onBack, onWeight, onClose }: HowMuchProps) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const { units } = useShop();
  const [heavy, other]: [MassUnit, MassUnit] = units === 'US' ? ['lb', 'kg'] : ['kg', 'lb'];
  const [entered, setEntered] = useState<Entered>({ text: '', unit: heavy });
  const asked = { value: Number(entered.text) || 0, unit: entered.unit === heavy ? heavy : other };
  const tooMuch = massOf({ ...asked, value: Number(asked.value.toFixed(3)) }) > massOf(most);
  const isZero = entered.text !== '' && asked.value === 0;
  return (
    <Dialog title={title} onClose={onClose} actions={<Button onClick={onBack}>{sayShared('back')}</Button>}>
      <Stack>
        <Button look="primary" wide onClick={() => onWeight(most)}>
          {say('all-of-it', { weight: weightOf(most) })}
        </Button>
        <Keypad
          label={say('part-of-it')}
          entered={entered}
          onChange={setEntered}
          saveLabel={sayShared('next')}
          error={isZero ? say('more-than-zero') : undefined}
          impossible={tooMuch ? say('there-are', { weight: weightOf(most) }) : undefined}
          units={[heavy, other].map((unit) => ({ unit, least: 0, most: mostIn(most, unit), decimals: 2 }))}
          onSave={({ value, unit }) => value > 0 && onWeight({ value, unit: unit === heavy ? heavy : other })}
        />
      </Stack>
    </Dialog>
  );
}

const mostIn = (most: EnteredMass, unit: MassUnit): number =>
  Number((Number(massOf(most)) / Number(massOf({ value: 1, unit }))).toFixed(2));
