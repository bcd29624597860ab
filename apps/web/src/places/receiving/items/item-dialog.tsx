import { recordItem } from '@larderbook/contracts';
import { useId, useState } from 'react';
import { useSend } from '../../../api/use-send';
import { useShop } from '../../../api/use-shop';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import type { Item } from '../known';
import { draftOf, emptyItem, itemFieldsOf, ownRangeErrors } from './item-draft';
import { ItemFields } from './item-fields';

type ItemDialogProps = { item?: Item; onSaved?: (item: Item) => void; onClose: () => void };

/** A new item, or a correction of one: what was recorded before keeps what it was recorded under. */
export function ItemDialog({ item, onSaved, onClose }: ItemDialogProps) {
  const { degrees } = useShop();
  const form = useId();
  const [itemId] = useState(newId);
  const [draft, setDraft] = useState(() => (item ? draftOf(item, degrees) : emptyItem(degrees)));
  const [rangeErrors, setRangeErrors] = useState<Record<string, string>>({});
  const { send, busy, errors, problem } = useSend(recordItem, (saved) => {
    announce(`${saved.name} is ${item ? 'corrected' : 'added'}.`);
    onClose();
    onSaved?.(saved);
  });
  const save = () => {
    const wrong = ownRangeErrors(draft);
    setRangeErrors(wrong);
    if (Object.keys(wrong).length === 0) send({ itemId, ...itemFieldsOf(draft), ...(item && { amends: item.itemId }) });
  };
  const shown = { ...errors, ...rangeErrors };
  return (
    <Dialog
      title={item ? `Correct ${item.name}` : 'Add an item'}
      closeLabel={item ? 'Leave it' : 'Add none'}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy && 'Saving the item…'}>
          {item ? 'Save the correction' : 'Add the item'}
        </Button>
      }
    >
      <Form id={form} errors={shown} busy={busy} onSubmit={save}>
        <Stack>
          <ItemFields draft={draft} errors={shown} onChange={setDraft} />
          {problem !== undefined && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
