import type { Kind } from '../kind';
import { none } from '../none';
import type { AttestationLimit } from './attestation-limit';

export const attestation: Kind<AttestationLimit> = {
  takenAs: 'attestation',
  isOfCore: false,
  isChill: false,
  unitsRead: none,
  fault: () => undefined,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};
