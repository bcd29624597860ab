import { useState } from 'react';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';
import { useSay } from '../../../ui/voice';

/** What a small shop packs in one run. Common practice, no source. */
const usual = { least: 1, most: 2000, decimals: 0 };

export function Counted({ onCount, onClose }: { onCount: (count: number) => void; onClose: () => void }) {
  const say = useSay('lot-forms');
  const [entered, setEntered] = useState<Entered>({ text: '', unit: say('packages') });
  const isNone = entered.text !== '' && Number(entered.text) === 0;
  return (
    <Dialog title={say('pack')} onClose={onClose}>
      <Keypad
        label={say('how-many')}
        units={[{ ...usual, unit: say('packages') }]}
        entered={entered}
        onChange={setEntered}
        saveLabel={say('next-net-weight')}
        onSave={({ value }) => value > 0 && onCount(value)}
        error={isNone ? say('at-least-one') : undefined}
      />
    </Dialog>
  );
}
