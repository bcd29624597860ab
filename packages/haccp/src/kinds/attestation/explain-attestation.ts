import { judgeAttestation, type Attestation } from './judge-attestation';
import type { AttestationLimit } from './attestation-limit';
import type { Tell } from '../../limits/told';
import type { WorkedOut } from '../../explain/explanation';

/** One answer as it was given. `at` in epoch ms. */
export type Answered = { id?: string; at?: number; answer: Attestation | undefined };

/** Each answer with what was seen: a bare yes is an answer nobody can check. */
export function explainAttestation(limit: AttestationLimit, answers: readonly Answered[], tell: Tell): WorkedOut {
  const judged = answers.map((one) => ({ ...one, told: tell(judgeAttestation(one.answer, limit), limit) }));
  return {
    steps: judged.map(({ told }) => ({
      what: 'Seen by a person',
      rule: limit.statement,
      putIn: told.measured,
      gives: told.because,
    })),
    restsOn: judged.map(({ id, at, told }) => ({ id, at, said: told.measured, role: told.kind })),
    assumptions: ['Only a yes with what was seen is met.'],
  };
}
