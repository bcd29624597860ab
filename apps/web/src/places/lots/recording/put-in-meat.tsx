import type { Lot } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { useSay } from '../../../ui/voice';
import type { Amending } from './amending';
import type { Onward } from './doing';
import { SavedMeat } from './saved-meat';
import { SourceChoice } from './source-choice';
import { TakenWeight } from './taken-weight';
import { TrimmedWeight } from './trimmed-weight';
import { useMeatForm } from './use-meat-form';

type PutInMeatProps = { lot: Lot; amending?: Amending; onNext?: Onward; onClose: () => void };

export function PutInMeat({ lot, amending, onNext, onClose }: PutInMeatProps) {
  const say = useSay('lot-forms');
  const form = useMeatForm(lot, amending);
  const { recording, source, taken } = form;
  if (recording.saved) {
    return (
      <SavedMeat form={form} onClose={onClose}>
        {onNext && (
          <Button look="primary" onClick={onNext.go}>
            {onNext.words}
          </Button>
        )}
        {!amending && <Button onClick={form.again}>{say('more-meat')}</Button>}
      </SavedMeat>
    );
  }
  if (!source) {
    return (
      <Dialog title={say('which-meat')} onClose={onClose}>
        <SourceChoice lot={lot} onChoose={form.setSource} />
      </Dialog>
    );
  }
  if (!taken) return <TakenWeight form={form} source={source} onClose={onClose} />;
  return <TrimmedWeight lot={lot} form={form} source={source} taken={taken} onClose={onClose} />;
}
