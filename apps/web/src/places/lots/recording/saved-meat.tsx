import { massIn } from '@larderbook/haccp';
import type { ReactNode } from 'react';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { SavedDialog } from './saved-dialog';
import type { MeatForm } from './use-meat-form';

type SavedMeatProps = { form: MeatForm; children: ReactNode; onClose: () => void };

/** Cure and spices are reckoned on the meat block. */
export function SavedMeat({ form: { recording, source, taken }, children, onClose }: SavedMeatProps) {
  const say = useSay('lot-forms');
  const { units } = useShop();
  const { saved } = recording;
  if (!saved || !source || !taken) return null;
  const what =
    saved.state === 'sent'
      ? say('meat-block-now', { weight: massIn(units, saved.reply.meatBlockGrams) })
      : say('taken-from', { item: source.what, weight: enteredWeight(taken), code: source.code });
  return (
    <SavedDialog title={say('meat-is-in')} what={what} saved={saved} onClose={onClose}>
      {children}
    </SavedDialog>
  );
}
