import type { AttestationLimit } from './attestation-limit';
import type { Figures, Verdict } from '../../limits/verdict';

/** What a person answered, and what was seen. */
export type Attestation = { holds: boolean; seen: string };

/**
 * Yes with what was seen is met; no is missed; a bare yes is an answer nobody can check, so it is undetermined, unless
 * the moment is all that is asked for.
 */
export function judgeAttestation(answer: Attestation | undefined, limit: AttestationLimit): Verdict {
  const seen = typeof answer?.seen === 'string' ? answer.seen.trim() : '';
  const figures: Figures = seen ? { seen } : {};
  if (answer?.holds === false) return { kind: 'missed', finding: 'attested-no', figures, notes: [] };
  if (answer?.holds === true && seen) return { kind: 'met', finding: 'attested-yes', figures, notes: [] };
  if (answer?.holds === true && limit.asks === 'moment') return { kind: 'met', finding: 'attested-moment', figures, notes: [] };
  return { kind: 'undetermined', finding: answer?.holds === true ? 'attested-bare' : 'not-attested', figures, notes: [] };
}
