import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import { done, type Worker } from './a-shop';

/** A corrective action in each form, with the answer to recurrence. */
export const anAction = {
  critical: {
    form: 'critical',
    cause: 'The door stood open; it was shut.',
    control: 'The room is at 36 °F again.',
    prevention: 'The door gets a closer.',
    product: 'The lot was held and looked at.',
    different: 'A chime sounds.',
  },
  prerequisite: {
    form: 'prerequisite',
    done: 'The door was shut; the room is at 36 °F again.',
    product: 'The lot was held and looked at.',
    different: 'A chime sounds.',
  },
  unforeseen: {
    form: 'unforeseen',
    segregation: 'Tagged, in the walk-in.',
    acceptability: 'Every package was looked at.',
    product: 'None leaves before it is decided.',
    reassessment: 'Not likely to come again; not added to the plan.',
    reassessedBy: 'Odile Marsh',
  },
} as const satisfies Record<contract.CorrectiveActionForm, contract.CorrectiveAction>;

export type Decided = Partial<contract.InputOf<typeof contract.recordDisposition>>;

export const showDeviation = (by: Worker, deviationId: string): Promise<contract.Deviation> =>
  done<contract.Deviation>(ask(by, contract.showDeviation, { deviationId }));

/** What was done about it, in the form it asks for. */
export async function act(by: Worker, deviationId: string, takenAt: string): Promise<contract.Deviation> {
  const { form } = await showDeviation(by, deviationId);
  return done(ask(by, contract.recordCorrectiveAction, { actionId: v7(), deviationId, action: anAction[form], takenAt }));
}

/** A decision about all that is undecided of what the deviation was opened on, unless said otherwise. */
export async function decide(by: Worker, deviationId: string, decided: Decided = {}) {
  const { products } = await showDeviation(by, deviationId);
  const [first] = products;
  const { decision = 'release', lotId = first?.lotId, receiptId = lotId ? undefined : first?.receiptId, ...rest } = decided;
  const { value, unit } = first?.undecided ?? { value: 1, unit: 'kg' as const };
  const basis = decision === 'release' ? ('test result' as const) : undefined;
  const made = { dispositionId: v7(), deviationIds: [deviationId], weight: { value, unit }, reason: 'Core never above 40 °F.' };
  return ask(by, contract.recordDisposition, { ...made, decision, lotId, receiptId, basis, ...rest });
}

export const close = (by: Worker, deviationId: string) => ask(by, contract.closeDeviation, { closingId: v7(), deviationId, note: '' });

/** Acted on, decided as said, or released, and closed. */
export async function settle(by: Worker, deviationId: string, takenAt: string, decided: readonly Decided[] = [{}]) {
  await act(by, deviationId, takenAt);
  for (const each of decided) await done(decide(by, deviationId, each));
  return done<contract.Deviation>(close(by, deviationId));
}
