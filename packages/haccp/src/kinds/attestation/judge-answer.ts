import type { HumidityKept } from '../../limit-sets/humidity-kept';
import { judgeHumidityKept, type CookSeen } from '../../limit-sets/judge-humidity-kept';
import type { Verdict } from '../../limits/verdict';
import type { AttestationLimit } from './attestation-limit';
import { judgeAttestation, type Attestation } from './judge-attestation';

type Answer = Attestation & { humidity?: HumidityKept };

export const judgeAnswer = (answer: Answer | undefined, limit: AttestationLimit, cook: CookSeen | undefined): Verdict =>
  limit.asks === 'humidity' ? judgeHumidityKept(answer, limit, cook) : judgeAttestation(answer, limit);
