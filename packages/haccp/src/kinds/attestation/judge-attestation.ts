import type { AttestationLimit } from './attestation-limit';
import type { Figures, Verdict } from '../../limits/verdict';

export type Attestation = { holds: boolean; seen: string };

/** Nobody can check a bare yes: undetermined, unless only the moment is asked for. */
export function judgeAttestation(answer: Attestation | undefined, limit: AttestationLimit): Verdict {
  const seen = typeof answer?.seen === 'string' ? answer.seen.trim() : '';
  const figures: Figures = seen ? { seen } : {};
  if (answer?.holds === false) return { kind: 'missed', finding: 'attested-no', figures, notes: [] };
  if (answer?.holds === true && seen) return { kind: 'met', finding: 'attested-yes', figures, notes: [] };
  if (answer?.holds === true && limit.asks === 'moment') return { kind: 'met', finding: 'attested-moment', figures, notes: [] };
  return { kind: 'undetermined', finding: answer?.holds === true ? 'attested-bare' : 'not-attested', figures, notes: [] };
}
