import type { InputOf, recordReceipt } from '@larderbook/contracts';
import { Problem } from '../platform/problem';
import type { ItemNow } from '../plan/items-now';

type Delivery = Pick<InputOf<typeof recordReceipt>, 'killDate' | 'packDate' | 'takenAt' | 'fractionPercent'>;

const day = 86_400_000;

/** What cannot be true of any delivery. Throws `invalid-input` with a sentence for each field. */
export function checkDelivery({ killDate, packDate, takenAt, fractionPercent }: Delivery, item: ItemNow): void {
  const lastDay = new Date(Date.parse(takenAt) + day).toISOString().slice(0, 10); // a day of grace for every time zone
  const errors = [
    fractionPercent !== undefined && !item.substance && { pointer: '#/fractionPercent', detail: `${item.name} holds no restricted substance.` },
    killDate !== undefined && killDate > lastDay && { pointer: '#/killDate', detail: 'The kill date is after the delivery.' },
    packDate !== undefined && packDate > lastDay && { pointer: '#/packDate', detail: 'The pack date is after the delivery.' },
    killDate !== undefined && packDate !== undefined && packDate < killDate && { pointer: '#/packDate', detail: 'The pack date is before the kill date.' },
  ].filter((error) => error !== false);
  if (errors.length > 0) throw new Problem('invalid-input', { detail: errors[0]?.detail, errors });
}
