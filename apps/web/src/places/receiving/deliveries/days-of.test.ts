import { clockFor } from '@larderbook/messages';
import { expect, test } from 'vitest';
import { aReceipt, madeAt } from './a-receipt.test-data';
import { daysOf } from './days-of';

test('deliveries stand under their day by the clock of the shop, not of the server', () => {
  const evening = aReceipt({ code: 'R-0003', ...madeAt('2026-05-11T02:30:00Z') });
  const noon = aReceipt({ code: 'R-0002', ...madeAt('2026-05-10T17:00:00Z') });
  const before = aReceipt({ code: 'R-0001', ...madeAt('2026-05-08T17:00:00Z') });
  const days = daysOf([evening, noon, before], clockFor({ language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' }));
  expect(days.map(({ day, receipts }) => [day, receipts.map(({ code }) => code)])).toEqual([
    ['Sun, May 10, 2026', ['R-0003', 'R-0002']],
    ['Fri, May 8, 2026', ['R-0001']],
  ]);
});
