import { useState } from 'react';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';

/** What a small shop packs in one run. Common practice, no source. */
const usual = { unit: 'packages', least: 1, most: 2000, decimals: 0 };

/** How many packages of one weight. */
export function Counted({ onCount, onClose }: { onCount: (count: number) => void; onClose: () => void }) {
  const [entered, setEntered] = useState<Entered>({ text: '', unit: usual.unit });
  const isNone = entered.text !== '' && Number(entered.text) === 0;
  return (
    <Dialog title="Pack" onClose={onClose}>
      <Keypad
        label="How many packages of one weight?"
        units={[usual]}
        entered={entered}
        onChange={setEntered}
        saveLabel="Next: net weight"
        onSave={({ value }) => value > 0 && onCount(value)}
        error={isNone ? 'At least 1.' : undefined}
      />
    </Dialog>
  );
}
