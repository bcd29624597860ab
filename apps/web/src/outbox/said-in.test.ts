import { expect, test } from 'vitest';
import { saidIn } from './said-in';

test('of an entry its words and weights can be read, and no ids or codes', () => {
  const action = {
    form: 'critical',
    cause: 'The door stood open.',
    control: 'It was shut.',
    prevention: 'A spring.',
    product: 'Chilled on.',
  };
  expect(saidIn({ deviationId: '0193', action, takenAt: '2026-03-02T08:00:00Z' })).toEqual([
    'The door stood open.',
    'It was shut.',
    'A spring.',
    'Chilled on.',
  ]);
  const receipt = { itemId: '0193', weight: { value: 90, unit: 'kg' }, decision: 'accepted', reason: '' };
  expect(saidIn({ amends: '0193', reason: 'Read the wrong scale.', receipt })).toEqual([
    'Read the wrong scale.',
    { value: 90, unit: 'kg' },
  ]);
  expect(saidIn(undefined)).toEqual([]);
});
