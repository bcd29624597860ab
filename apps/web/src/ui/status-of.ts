import type { State } from './status';

export type Judged = { kind: Exclude<State, 'running'>; running?: unknown; still?: 'cooling' };

/** A missed limit stays missed in the headline, though the stage goes on. */
export function statusOf({ kind, running, still }: Judged): { state: State; still?: 'cooling' } {
  if (kind === 'missed') return { state: 'missed', ...(still && { still }) };
  return { state: running ? 'running' : kind };
}
