import type { SayOf } from '@larderbook/messages';
import type { OutboxState } from '../outbox/use-outbox';

/** On the button that is always in sight: that all is in the book is said only of an outbox that was read. */
export function sayOutbox({ read, waiting, parked }: OutboxState, say: SayOf<'shell'>): string {
  const count = waiting.length + parked.length;
  if (read === 'unreadable') return say('unreadable');
  if (read === 'not-yet') return say('outbox-title');
  return count === 0 ? say('all-sent') : say('not-sent', { count });
}

/** In the dialog, above the entries. */
export function sayWhy({ read, waiting, parked, why }: OutboxState, say: SayOf<'shell'>): string | undefined {
  if (read === 'unreadable') return say('device-failed');
  if (read === 'not-yet') return undefined;
  if (waiting.length + parked.length === 0) return say('outbox-empty');
  return waiting.length > 0 ? say(codes[why ?? 'empty']) : undefined;
}

const codes = {
  empty: 'being-sent',
  'no-connection': 'no-connection',
  'sign-in': 'other-person',
  'server-failed': 'server-failed',
  'device-failed': 'device-failed',
} as const;
