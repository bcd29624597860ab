import type { Deviation, Role } from '@larderbook/contracts';

/** What an open deviation still needs, in this order; `done` when it is closed. */
export type Part = 'action' | 'disposition' | 'closing' | 'done';

export const partWords: Record<Exclude<Part, 'done'>, string> = {
  action: 'Corrective action',
  disposition: 'What becomes of the product',
  closing: 'Closing',
};

export function nextPart({ open, actions, covered }: Pick<Deviation, 'open' | 'actions' | 'covered'>): Part {
  if (!open) return 'done';
  if (actions.length === 0) return 'action';
  return covered ? 'closing' : 'disposition';
}

/** Why a person may not record a part, or nothing when they may. */
export function whyNot(part: Part, roles: readonly Role[]): string | undefined {
  const decides = roles.includes('owner') || roles.includes('reviewer');
  if (part === 'done' || decides) return undefined;
  if (part === 'action') return roles.includes('operator') ? undefined : 'Your account may look, not record.';
  return part === 'disposition' ? 'The owner or a reviewer decides what becomes of the product.' : 'The owner or a reviewer closes it.';
}
