import type { Receipt } from '@larderbook/contracts';
import type { Clock } from '@larderbook/messages';

export type Day = { day: string; receipts: Receipt[] };

/** The day is by the shop's clock, in the order given. */
export function daysOf(receipts: Receipt[], clock: Clock): Day[] {
  const days: Day[] = [];
  for (const receipt of receipts) {
    const day = clock.weekDay(Date.parse(receipt.made.at));
    const last = days.at(-1);
    if (last?.day === day) last.receipts.push(receipt);
    else days.push({ day, receipts: [receipt] });
  }
  return days;
}
