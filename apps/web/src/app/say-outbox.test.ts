import type { SayOf } from '@larderbook/messages';
import { expect, test } from 'vitest';
import type { Entry } from '../outbox/entry';
import { outboxState } from '../outbox/use-outbox';
import { sayOutbox, sayWhy } from './say-outbox';

const code = ((said: string) => said) as unknown as SayOf<'shell'>;
const entry = (state: Entry['state']): Entry => ({
  ...{ id: '1', method: 'PUT', path: '/readings/1', body: {}, what: '', establishmentId: '', personId: '', takenAt: '' },
  ...{ state, failures: 0 },
});

test.each([
  ['was not read yet', undefined, 'outbox-title', undefined],
  ['cannot be read', 'unreadable' as const, 'unreadable', 'device-failed'],
  ['is empty', [], 'all-sent', 'outbox-empty'],
  ['holds what waits', [entry('waiting')], 'not-sent', 'being-sent'],
  ['holds what was refused', [entry('parked')], 'not-sent', undefined],
])('of an outbox that %s it is said so', (_case, all, button, why) => {
  expect([sayOutbox(outboxState(all), code), sayWhy(outboxState(all), code)]).toEqual([button, why]);
});
