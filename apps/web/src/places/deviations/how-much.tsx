import { massFromGrams, sayMass, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { Keypad, type Entered } from '../../ui/keypad';

type HowMuchProps = {
  title: string;
  stake: number | undefined;
  onBack: () => void;
  onWeight: (weight: EnteredMass) => void;
  onClose: () => void;
};

/** How much product a decision is about; `stake` is what went in, in grams. */
export function HowMuch({ title, stake, onBack, onWeight, onClose }: HowMuchProps) {
  const { units } = useShop();
  const [heavy, other]: [MassUnit, MassUnit] = units === 'US' ? ['lb', 'kg'] : ['kg', 'lb'];
  const [entered, setEntered] = useState<Entered>({ text: '', unit: heavy });
  const isZero = entered.text !== '' && Number(entered.text) === 0;
  return (
    <Dialog title={title} onClose={onClose} actions={<Button onClick={onBack}>Back</Button>}>
      <Keypad
        label="How much product?"
        entered={entered}
        onChange={setEntered}
        saveLabel="Next: the basis"
        error={isZero ? 'A weight is more than zero.' : undefined}
        units={[heavy, other].map((unit) => ({ unit, least: 0, most: mostOf(stake, unit), decimals: 2 }))}
        limit={stake === undefined ? undefined : `about ${sayMass(massFromGrams(stake.toFixed(9)), heavy, 1)} went in`}
        onSave={({ value, unit }) => value > 0 && onWeight({ value, unit: unit === heavy ? heavy : other })}
      />
    </Dialog>
  );
}

/** What went in and a little more; without it, a small shop's day. Common practice, no source. */
const mostOf = (stake: number | undefined, unit: MassUnit): number =>
  Number(((1.2 * (stake ?? 500_000)) / (unit === 'lb' ? 453.59237 : 1000)).toPrecision(2));
