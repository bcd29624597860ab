import type { InputOf, recordReceipt } from '@larderbook/contracts';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';
import type { ItemNow } from '../products/items-now';

type Delivery = Pick<InputOf<typeof recordReceipt>, 'killDate' | 'packDate' | 'takenAt' | 'fractionPercent'>;

const day = 86_400_000;

/** Throws `invalid-input` with a fault for each field. */
export function checkDelivery({ killDate = '', packDate = '', takenAt, fractionPercent }: Delivery, item: ItemNow): void {
  const lastDay = new Date(Date.parse(takenAt) + day).toISOString().slice(0, 10); // a day of grace for every time zone
  const faults: [isFault: boolean, field: string, fault: Told][] = [
    [fractionPercent !== undefined && !item.substance, 'fractionPercent', told('holds-no-substance', { name: item.name })],
    [killDate > lastDay, 'killDate', told('killed-after-delivery')],
    [packDate > lastDay, 'packDate', told('packed-after-delivery')],
    [packDate !== '' && packDate < killDate, 'packDate', told('packed-before-killed')],
  ];
  const errors = faults.flatMap(([isFault, field, fault]) => (isFault ? [{ pointer: `#/${field}`, ...fault }] : []));
  if (errors.length > 0) throw new Problem('invalid-input', errors.slice(0, 1), errors);
}
