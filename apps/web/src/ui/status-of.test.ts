import { expect, test } from 'vitest';
import { statusOf } from './status-of';

const running = { stage: '80 → 40 °F', bound: '40 °F' };

test.each([
  [{ kind: 'met' as const }, 'met', undefined],
  [{ kind: 'undetermined' as const }, 'undetermined', undefined],
  [{ kind: 'undetermined' as const, running }, 'running', undefined],
  [{ kind: 'missed' as const }, 'missed', undefined],
  [{ kind: 'missed' as const, running }, 'missed', undefined],
  [{ kind: 'missed' as const, running, still: 'cooling' as const }, 'missed', 'cooling'],
  [{ kind: 'missed' as const, still: 'cooling' as const }, 'missed', 'cooling'],
])('%j is headed %s', (verdict, state, still) => {
  expect(statusOf(verdict)).toEqual(still ? { state, still } : { state });
});
