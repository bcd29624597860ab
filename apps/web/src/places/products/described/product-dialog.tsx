import { recordProduct, type Product } from '@larderbook/contracts';
import { useState } from 'react';
import { fieldErrors, type FieldErrors } from '../../../api/check';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Stack } from '../../../ui/stack';
import { NotSaved } from '../not-saved';
import { useIdentified } from '../use-identified';
import { useWriting } from '../use-writing';
import { checkProduct, draftOf, emptyProduct } from './product-draft';
import { ProductFields } from './product-fields';
import { useSay } from '../../../ui/voice';

type ProductDialogProps = {
  /** Without it, a new product is added. */
  corrects?: Product;
  onSaved: (productId: string) => void;
  onClose: () => void;
};

export function ProductDialog({ corrects, onSaved, onClose }: ProductDialogProps) {
  const sayShared = useSay('shared');
  const say = useSay('products');
  const { id, draft, change } = useIdentified(() => (corrects ? draftOf(corrects) : emptyProduct));
  const [errors, setErrors] = useState<FieldErrors>({});
  const writing = useWriting(recordProduct);

  const save = () => {
    const checked = checkProduct(draft, say);
    setErrors(checked.errors ?? {});
    if (!checked.value) return;
    writing.mutate(
      { productId: id, ...checked.value, amends: corrects?.productId },
      {
        onSuccess: ({ name, productId }) => {
          announce(say('in-the-book', { name }));
          onSaved(productId);
        },
        onError: (error) => setErrors(fieldErrors(error)),
      },
    );
  };
  return (
    <Dialog
      title={corrects ? say('correct-title', { name: corrects.name }) : say('add')}
      onClose={onClose}
      actions={
        <Button look="primary" busy={writing.isPending && sayShared('saving')} onClick={save}>
          {sayShared('save')}
        </Button>
      }
    >
      <Stack>
        {corrects && <p>{say('correction-counts')}</p>}
        <ProductFields draft={draft} errors={errors} onChange={change} />
        <NotSaved error={writing.error} />
      </Stack>
    </Dialog>
  );
}
