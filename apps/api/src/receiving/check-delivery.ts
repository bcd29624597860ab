import type { InputOf, recordReceipt } from '@larderbook/contracts';
import { Problem } from '../platform/problem';
import type { ItemNow } from '../products/items-now';

type Delivery = Pick<InputOf<typeof recordReceipt>, 'killDate' | 'packDate' | 'takenAt' | 'fractionPercent'>;

const day = 86_400_000;

/** What cannot be true of any delivery. Throws `invalid-input` with a sentence for each field. */
export function checkDelivery({ killDate = '', packDate = '', takenAt, fractionPercent }: Delivery, item: ItemNow): void {
  const lastDay = new Date(Date.parse(takenAt) + day).toISOString().slice(0, 10); // a day of grace for every time zone
  const faults: [isFault: boolean, field: string, detail: string][] = [
    [fractionPercent !== undefined && !item.substance, 'fractionPercent', `${item.name} holds no restricted substance.`],
    [killDate > lastDay, 'killDate', 'The kill date is after the delivery.'],
    [packDate > lastDay, 'packDate', 'The pack date is after the delivery.'],
    [packDate !== '' && packDate < killDate, 'packDate', 'The pack date is before the kill date.'],
  ];
  const errors = faults.flatMap(([isFault, field, detail]) => (isFault ? [{ pointer: `#/${field}`, detail }] : []));
  if (errors.length > 0) throw new Problem('invalid-input', { detail: errors[0]?.detail, errors });
}
