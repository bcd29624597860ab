import type { Deviation } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { nextPart, whyNot } from './next-part';

const by = {
  personId: 'p',
  name: 'Ada Brook',
  at: '2026-03-05T12:00:00Z',
  recordedAt: '2026-03-05T12:00:00Z',
  station: '',
};
const actions: Deviation['actions'] = [{ actionId: 'a', action: { form: 'prerequisite', done: 'Shut.', product: 'None.' }, made: by }];
test.each([
  ['first what was done about it', { open: true, actions: [] }, 'action'],
  ['then what becomes of the product', { open: true, actions }, 'disposition'],
  ['as long as any of it is undecided', { open: true, actions, covered: false }, 'disposition'],
  ['then somebody closes it', { open: true, actions, covered: true }, 'closing'],
  ['a decision made first does not spare the corrective action', { open: true, actions: [], covered: true }, 'action'],
  ['closed is closed', { open: false, actions, covered: true }, 'done'],
] as const)('%s', (_case, deviation, part) => {
  expect(nextPart({ covered: false, ...deviation, actions: [...deviation.actions] })).toBe(part);
});

test('an operator records the corrective action, but neither decides nor closes', () => {
  expect(whyNot('action', ['operator'])).toBeUndefined();
  expect(whyNot('disposition', ['operator'])).toBe('who-decides');
  expect(whyNot('closing', ['operator'])).toBe('who-closes');
});

test('a reviewer and an owner may do all of it, an inspector nothing', () => {
  for (const part of ['action', 'disposition', 'closing'] as const) {
    expect(whyNot(part, ['reviewer'])).toBeUndefined();
    expect(whyNot(part, ['owner'])).toBeUndefined();
    expect(whyNot(part, ['inspector'])).toBeTruthy();
  }
});
