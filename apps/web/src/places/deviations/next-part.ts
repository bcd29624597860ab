import type { Deviation, Role } from '@larderbook/contracts';

/** The parts are recorded in this order; `done` means closed. */
export type Part = 'action' | 'disposition' | 'closing' | 'done';

export function nextPart({ open, actions, covered }: Pick<Deviation, 'open' | 'actions' | 'covered'>): Part {
  if (!open) return 'done';
  if (actions.length === 0) return 'action';
  return covered ? 'closing' : 'disposition';
}

/** Undefined when the person may. */
export function whyNot(part: Part, roles: readonly Role[]): 'may-not-record' | 'who-decides' | 'who-closes' | undefined {
  const decides = roles.includes('owner') || roles.includes('reviewer');
  if (part === 'done' || decides) return undefined;
  if (part === 'action') return roles.includes('operator') ? undefined : 'may-not-record';
  return part === 'disposition' ? 'who-decides' : 'who-closes';
}
