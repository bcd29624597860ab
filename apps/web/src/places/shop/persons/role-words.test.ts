import { expect, test } from 'vitest';
import { sayRoles } from './role-words';

test('several roles are said in one line, and none means that the person has left', () => {
  expect(sayRoles(['owner', 'reviewer'])).toBe('Owner, reviewer');
  expect(sayRoles(['inspector'])).toBe('Inspector');
  expect(sayRoles([])).toBe('Has left');
});
