import { wallTime } from '../../../ui/wall-time';
import type { Shipment } from './shipment';

/** Shipments of one day after the other, in the order given; the day is the shop's own. */
export function byDay(shipments: readonly Shipment[], zone: string): { day: string; shipments: Shipment[] }[] {
  const days = new Map<string, Shipment[]>();
  for (const shipment of shipments) {
    const day = wallTime(shipment.made.at, zone).slice(0, 10);
    days.set(day, [...(days.get(day) ?? []), shipment]);
  }
  return [...days].map(([day, ofDay]) => ({ day, shipments: ofDay }));
}
