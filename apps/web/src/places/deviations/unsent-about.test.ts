import type { Deviation } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import type { Entry } from '../../outbox/entry';
import { refusedAction, unsentAbout } from './unsent-about';

const deviation = {
  deviationId: 'D-5',
  actions: [{ actionId: 'A-1' }],
  dispositions: [{ dispositionId: 'P-1' }],
  closing: { closingId: 'C-1' },
} as Deviation;

const entry = (path: string, body: Record<string, unknown>, state: Entry['state'] = 'waiting'): Entry => ({
  ...{ id: path, method: 'PUT', path: `/${path}/1`, body, what: '', establishmentId: '', personId: '', takenAt: '' },
  ...{ state, failures: 0 },
});

test.each([
  ['its action', entry('corrective-actions', { deviationId: 'D-5', action: {} })],
  ['a decision about it and others', entry('dispositions', { deviationIds: ['D-4', 'D-5'] })],
  ['the void of its action', entry('voids', { what: 'action', amends: 'A-1' })],
  ['a destruction', entry('destructions', { dispositionId: 'P-1' })],
  ['its closing taken back', entry('closings-taken-back', { closingId: 'C-1' })],
])('%s that waits is about the deviation', (_case, waits) => {
  expect(unsentAbout(deviation, [waits])).toEqual([waits]);
});

test('what waits of another deviation is not', () => {
  expect(unsentAbout(deviation, [entry('corrective-actions', { deviationId: 'D-4' }), entry('readings', { lotId: 'L-1' })])).toEqual([]);
});

test('an action that was refused gives its words back, unless it corrected another', () => {
  const refused = entry('corrective-actions', { deviationId: 'D-5', action: { cause: 'The door' } }, 'parked');
  expect(refusedAction([refused])).toBe(refused);
  expect(
    refusedAction([
      { ...refused, state: 'waiting' },
      { ...refused, body: { ...refused.body, amends: 'A-1' } },
    ]),
  ).toBeUndefined();
});
