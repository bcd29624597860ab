import type { ReactNode } from 'react';
import { useShop } from '../../../api/use-shop';
import { sayWeight } from '../say/say-entered';
import { sayGrams } from '../say/say-grams';
import { SavedDialog } from './saved-dialog';
import type { MeatForm } from './use-meat-form';

type SavedMeatProps = { form: MeatForm; children: ReactNode; onClose: () => void };

/** After meat was put in: the meat block, on which cure and spices are reckoned. */
export function SavedMeat({ form: { recording, source, taken }, children, onClose }: SavedMeatProps) {
  const { units } = useShop();
  const { saved } = recording;
  if (!saved || !source || !taken) return null;
  const block = saved.state === 'sent' ? sayGrams(saved.reply.meatBlockGrams, units) : undefined;
  const what = block ? `Meat block now ${block}` : `${source.what} ${sayWeight(taken)} taken from ${source.code}`;
  return (
    <SavedDialog title="Meat is in" what={what} saved={saved} onClose={onClose}>
      {children}
    </SavedDialog>
  );
}
