import type { Clock } from '@larderbook/messages';
import type { Shipment } from './shipment';

/** In the order given; the day is the shop's own. */
export function byDay(shipments: readonly Shipment[], clock: Clock): { day: string; shipments: Shipment[] }[] {
  const days = new Map<string, Shipment[]>();
  for (const shipment of shipments) {
    const day = clock.weekDay(Date.parse(shipment.made.at));
    days.set(day, [...(days.get(day) ?? []), shipment]);
  }
  return [...days].map(([day, ofDay]) => ({ day, shipments: ofDay }));
}
