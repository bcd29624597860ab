import { judgeAttestation, type Attestation } from './judge-attestation';
import type { AttestationLimit } from './attestation-limit';
import { coded } from '../../limits/coded';
import type { WorkedOut } from '../../explain/explanation';

/** `at` in epoch ms. */
export type Answered = { id?: string; at?: number; answer: Attestation | undefined };

export function explainAttestation(limit: AttestationLimit, answers: readonly Answered[]): WorkedOut {
  const judged = answers.map((one) => ({ ...one, of: judgeAttestation(one.answer, limit) }));
  return {
    steps: judged.map(({ of }) => ({
      what: coded('seen-by-a-person'),
      rule: limit.statement,
      putIn: { verdict: 'measured' },
      gives: { verdict: 'because' },
      of,
    })),
    restsOn: judged.map(({ id, at, of }) => ({ id, at, is: { verdict: 'measured' }, role: coded(`judged-${of.kind}`), of })),
    assumptions: [coded('yes-with-what-was-seen')],
  };
}
