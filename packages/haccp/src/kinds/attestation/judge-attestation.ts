import type { AttestationLimit } from './attestation-limit';
import type { Saying } from '../../limits/told';

/** What a person answered, and what was seen. */
export type Attestation = { holds: boolean; seen: string };

/**
 * Yes with what was seen is met; no is missed; a bare yes is an answer nobody can check, so it is undetermined, unless
 * the moment is all that is asked for.
 */
export function judgeAttestation(answer: Attestation | undefined, limit: AttestationLimit): Saying {
  const seen = typeof answer?.seen === 'string' ? answer.seen.trim() : '';
  const shared = { limit: limit.statement, notes: [], source: limit.source };
  if (answer?.holds === false) {
    return {
      ...shared,
      kind: 'missed',
      measured: seen ? `no: ${seen}` : 'no',
      because: 'The statement does not hold.',
      next: 'Hold the lot and follow the corrective action of the plan.',
    };
  }
  if (answer?.holds === true && seen) {
    return { ...shared, kind: 'met', measured: `yes: ${seen}`, because: 'A person saw that the statement holds.' };
  }
  if (answer?.holds === true && limit.asks === 'moment') {
    return { ...shared, kind: 'met', measured: 'yes', because: 'A person recorded the moment.' };
  }
  return {
    ...shared,
    kind: 'undetermined',
    measured: answer?.holds === true ? 'yes' : 'no answer',
    because: answer?.holds === true ? 'Nothing was said about what was seen.' : 'There is no answer yet.',
    next: 'Look, answer yes or no, and say what you saw.',
  };
}
