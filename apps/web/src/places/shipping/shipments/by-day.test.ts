import { clockFor } from '@larderbook/messages';
import { expect, test } from 'vitest';
import { byDay } from './by-day';

const aShipment = (number: number, at: string) => ({
  shipmentId: String(number),
  rowId: String(number),
  corrections: [],
  voided: false,
  number,
  customer: { customerId: 'c', name: 'Stall', address: '', contact: '' },
  document: '',
  made: { personId: 'p', name: 'Ivo Tarn', at, recordedAt: at, station: '' },
  lines: [],
});

test('what left at night in the shop belongs to the shop’s day, not to that of Greenwich', () => {
  const late = aShipment(2, '2026-03-03T04:30:00Z'); // 22:30 on the 2nd in Chicago
  const early = aShipment(1, '2026-03-02T14:00:00Z');
  expect(byDay([late, early], clockFor({ language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' }))).toEqual([
    { day: 'Mon, Mar 2, 2026', shipments: [late, early] },
  ]);
});
