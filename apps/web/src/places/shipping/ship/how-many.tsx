import { massOf, roundedMass } from '@larderbook/haccp';
import type { SayOf, TellAccount } from '@larderbook/messages';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { useAccount } from '../../../ui/use-account';
import { useFigures, useSay } from '../../../ui/voice';
import type { Packing } from '../stock/packing';

type HowManyProps = {
  packing: Packing;
  onLoad?: number;
  onCount: (count: number) => void;
  onTakeOff: () => void;
  onClose: () => void;
};

/** The count is never more than are left. */
export function HowMany({ packing, onLoad, onCount, onTakeOff, onClose }: HowManyProps) {
  const say = useSay('shipping');
  const tell = useAccount();
  const { number, quantity } = useFigures();
  const unit = say('package-unit');
  const { code, productName, left, net, useBy } = packing;
  const [entered, setEntered] = useState<Entered>({ text: onLoad ? String(onLoad) : '', unit });
  const value = numberOf(entered.text);
  return (
    <Dialog
      title={`${productName}, ${code}`}
      onClose={onClose}
      actions={onLoad !== undefined && <Button onClick={onTakeOff}>{say('take-off')}</Button>}
    >
      <Keypad
        label={say('how-many')}
        units={[{ unit, least: 1, most: left, decimals: 0 }]}
        entered={entered}
        saveLabel={say('put-on')}
        limit={say('at-most', { left: number(left) })}
        impossible={value === undefined ? undefined : whyNot(value, packing, say, tell)}
        preview={
          <p>
            {say('makes-weight', {
              count: number(value ?? 0),
              weight: quantity(net),
              total: weightOf(value ?? 0, packing),
              day: { day: useBy },
            })}
          </p>
        }
        onChange={setEntered}
        onSave={(kept) => onCount(kept.value)}
      />
    </Dialog>
  );
}

function whyNot(
  asked: number,
  { code, left, count, mayShip, because }: Packing,
  say: SayOf<'shipping'>,
  tell: TellAccount,
): string | undefined {
  if (!mayShip) return say('not-any-more', { because: tell(because) });
  if (asked < 1) return say('at-least-one');
  return asked > left ? say('not-so-many', { left: String(left), count: String(count), code, asked: String(asked) }) : undefined;
}

const weightOf = (count: number, { net: { value, unit } }: Packing) => roundedMass(massOf({ value, unit }) * BigInt(count), unit);
