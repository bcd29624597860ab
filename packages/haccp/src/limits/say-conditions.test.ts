import { expect, test } from 'vitest';
import { sayConditions } from './say-conditions';

test('what lots are judged by comes first, then what adopting the plan affirms and what it has to support', () => {
  expect(
    sayConditions([
      { kind: 'support', says: 'Only inside a gap.' },
      { kind: 'statement', says: 'Humidity is controlled too.' },
      { kind: 'nitrite', least: 100_000, per: 'meat block' },
      { kind: 'accelerator', least: 250_000, per: 'batch' },
    ]),
  ).toEqual([
    'Only with at least 100 ppm ingoing sodium nitrite on the meat block, and at least 250 ppm ingoing erythorbate or ' +
      'ascorbate on the batch: judged from what goes into every lot.',
    'Adopting the plan affirms: Humidity is controlled too.',
    'The plan says what supports it: Only inside a gap.',
  ]);
  expect(sayConditions()).toEqual([]);
});
