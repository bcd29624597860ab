import { massOf, sayMass } from '@larderbook/haccp';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { dateWords } from '../../../ui/moment';
import type { Packing } from '../stock/packing';

type HowManyProps = {
  packing: Packing;
  onLoad?: number;
  onCount: (count: number) => void;
  onTakeOff: () => void;
  onClose: () => void;
};

/** How many packages of one run go: a count, never more than are left. */
export function HowMany({ packing, onLoad, onCount, onTakeOff, onClose }: HowManyProps) {
  const { code, productName, left, net, useBy } = packing;
  const [entered, setEntered] = useState<Entered>({ text: onLoad ? String(onLoad) : '', unit: 'packages' });
  const value = numberOf(entered.text);
  return (
    <Dialog
      title={`${productName}, ${code}`}
      onClose={onClose}
      actions={onLoad !== undefined && <Button onClick={onTakeOff}>Take it off the load</Button>}
    >
      <Keypad
        label="How many packages?"
        units={[{ unit: 'packages', least: 1, most: left, decimals: 0 }]}
        entered={entered}
        saveLabel="Put on the load"
        limit={`≤ ${left} left`}
        impossible={value === undefined ? undefined : whyNot(value, packing)}
        preview={
          <p>
            {value} × {net.value} {net.unit} = <strong>{weightOf(value ?? 0, packing)}</strong>, use by {dateWords(useBy)}
          </p>
        }
        onChange={setEntered}
        onSave={(kept) => onCount(kept.value)}
      />
    </Dialog>
  );
}

function whyNot(asked: number, { code, left, count, mayShip, because }: Packing): string | undefined {
  if (!mayShip) return `It may not ship any more. ${because}`;
  if (asked < 1) return 'At least 1.';
  return asked > left ? `${left} of ${count} are left of ${code}: ${asked} cannot leave.` : undefined;
}

const weightOf = (count: number, { net: { value, unit } }: Packing): string => sayMass(massOf({ value, unit }) * BigInt(count), unit);
