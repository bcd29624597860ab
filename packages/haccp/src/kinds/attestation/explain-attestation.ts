import { judgeAttestation, type Attestation } from './judge-attestation';
import type { AttestationLimit } from './attestation-limit';
import type { WorkedOut } from '../../explain/explanation';

/** One answer as it was given. `at` in epoch ms. */
export type Answered = { id?: string; at?: number; answer: Attestation | undefined };

/** Each answer with what was seen: a bare yes is an answer nobody can check. */
export function explainAttestation(limit: AttestationLimit, answers: readonly Answered[]): WorkedOut {
  const judged = answers.map((one) => ({ ...one, verdict: judgeAttestation(one.answer, limit) }));
  return {
    steps: judged.map(({ verdict }) => ({
      what: 'Seen by a person',
      rule: limit.statement,
      putIn: verdict.measured,
      gives: verdict.because,
    })),
    restsOn: judged.map(({ id, at, verdict }) => ({ id, at, said: verdict.measured, role: verdict.kind })),
    assumptions: ['Only a yes with what was seen is met.'],
  };
}
