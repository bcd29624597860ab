import type { Receipt } from '@larderbook/contracts';
import { dayWords } from '../../../ui/moment';

export type Day = { day: string; receipts: Receipt[] };

/** Deliveries under the day on which each came, by the clock of the shop, in the order given. */
export function daysOf(receipts: Receipt[], zone: string): Day[] {
  const days: Day[] = [];
  for (const receipt of receipts) {
    const day = dayWords(receipt.made.at, zone);
    const last = days.at(-1);
    if (last?.day === day) last.receipts.push(receipt);
    else days.push({ day, receipts: [receipt] });
  }
  return days;
}
