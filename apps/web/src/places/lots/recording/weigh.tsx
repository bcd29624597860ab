import type { Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Dialog } from '../../../ui/dialog';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import { isStillToWeigh } from '../next/next-thing';
import { sayTarget } from '../next/say-next';
import type { Amending } from './amending';
import type { Onward } from './doing';
import { WeighIngredient } from './weigh-ingredient';

type WeighProps = { lot: Lot; itemId?: string; amending?: Amending; onNext?: Onward; onClose: () => void };

export function Weigh({ lot, itemId, amending, onNext, onClose }: WeighProps) {
  const say = useSay('lot-forms');
  const sayLot = useSay('lots');
  const { units } = useShop();
  const [chosen, setChosen] = useState(itemId);
  const targets = lot.targets.filter(({ part }) => part === 'ingredient');
  const target = targets.find((each) => each.itemId === chosen);
  if (target)
    return <WeighIngredient key={target.itemId} lot={lot} target={target} amending={amending} onNext={onNext} onClose={onClose} />;
  return (
    <Dialog title={say('which-ingredient')} onClose={onClose}>
      <Tiles
        label={say('ingredients')}
        tiles={targets.map((each) => ({
          key: each.itemId,
          title: each.itemName,
          lines: [sayTarget(each, units, sayLot), say(isStillToWeigh(each) ? 'still-to-weigh' : 'weighed')],
          onTap: () => setChosen(each.itemId),
        }))}
      />
    </Dialog>
  );
}
