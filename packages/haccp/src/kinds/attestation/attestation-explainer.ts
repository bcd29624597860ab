import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import type { AttestationLimit } from './attestation-limit';
import { explainAttestation } from './explain-attestation';

export const attestationExplainer: Explainer<AttestationLimit> = {
  ...undrawn,
  explain: (limit, _verdict, { alone }) =>
    limit.asks === 'humidity'
      ? explainByVerdict
      : explainAttestation(
          limit,
          alone.map(({ id, at, answer }) => ({ id, at, answer })),
        ),
};
