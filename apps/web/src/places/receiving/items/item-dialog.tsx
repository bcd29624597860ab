import { recordItem } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { useShop } from '../../../api/use-shop';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { FormDialog } from '../../../ui/form-dialog';
import { useSay } from '../../../ui/voice';
import type { Item } from '../known';
import { draftOf, emptyItem, itemFieldsOf, ownRangeErrors } from './item-draft';
import { ItemFields } from './item-fields';

type ItemDialogProps = { item?: Item; onSaved?: (item: Item) => void; onClose: () => void };

export function ItemDialog({ item, onSaved, onClose }: ItemDialogProps) {
  const say = useSay('items');
  const { degrees } = useShop();
  const [itemId] = useState(newId);
  const [draft, setDraft] = useState(() => (item ? draftOf(item, degrees) : emptyItem(degrees)));
  const [rangeErrors, setRangeErrors] = useState<Record<string, string>>({});
  const { send, busy, errors, problem } = useSend(recordItem, (saved) => {
    announce(say(item ? 'corrected' : 'added', { name: saved.name }));
    onClose();
    onSaved?.(saved);
  });
  const save = () => {
    const wrong = ownRangeErrors(draft, say);
    setRangeErrors(wrong);
    if (Object.keys(wrong).length === 0) send({ itemId, ...itemFieldsOf(draft), ...(item && { amends: item.itemId }) });
  };
  const shown = { ...errors, ...rangeErrors };
  return (
    <FormDialog
      title={item ? say('correct-named', { name: item.name }) : say('add-item')}
      errors={shown}
      problem={problem}
      busy={busy}
      onSave={save}
      onClose={onClose}
    >
      <ItemFields draft={draft} errors={shown} onChange={setDraft} />
    </FormDialog>
  );
}
