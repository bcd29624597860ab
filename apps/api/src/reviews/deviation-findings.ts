import { asGiven } from '@larderbook/haccp';
import type { Deviation, Finding } from '@larderbook/contracts';
import { named, sentence } from '../platform/account';

/** A deviation that stands on the lot: what is next, or how it was closed. */
export function deviationFinding({ deviationId, controlPoint, number, description, open, ...deviation }: Deviation): Finding {
  const about = { about: 'deviation' as const, deviationId, controlPointId: controlPoint?.controlPointId };
  return open
    ? {
        ...about,
        kind: 'open',
        what: [sentence('deviation-open', { number: String(number) }), ...description],
        next: [nextFor(deviation)],
        blocks: true,
      }
    : { ...about, kind: 'settled', what: [closedBy(String(number), deviation), ...description], blocks: false };
}

function nextFor({ actions, covered, undecided }: Pick<Deviation, 'actions' | 'covered' | 'undecided'>) {
  if (actions.length === 0) return sentence('record-the-action');
  return covered ? sentence('close-it') : sentence('decide-what-becomes', { weight: asGiven(undecided.value, undecided.unit) });
}

function closedBy(number: string, { dispositions }: Pick<Deviation, 'dispositions'>) {
  const decided = dispositions.flatMap(({ decision, weight, voided }) =>
    voided ? [] : [named(`decided-${decision}`, { weight: asGiven(weight.value, weight.unit) })],
  );
  return decided.length > 0 ? sentence('closed-decided', { number, decided }) : sentence('closed-without-product', { number });
}
