import type { State } from './status';

export type Judged = { kind: Exclude<State, 'running'>; running?: unknown; still?: 'cooling' };

/** What is missed stays missed in the headline, though it goes on. */
export function statusOf({ kind, running, still }: Judged): { state: State; still?: 'cooling' } {
  if (kind === 'missed') return { state: 'missed', ...(still && { still }) };
  return { state: running ? 'running' : kind };
}
