import type { CriticalLimit } from '../limits/limit';
import type { LimitFault, LimitSlip } from '../limits/limit-fault-code';
import type { PrintedTemperature } from '../quantity/temperature';
import type { DwellRow } from './dwell/dwell-limit';

export type LimitKind = CriticalLimit['kind'];
export type LimitOf<K extends LimitKind> = Extract<CriticalLimit, { kind: K }>;

export type TakenAs = 'value' | 'curve' | 'weighings' | 'attestation';

export type Kind<Limit> = {
  takenAs: TakenAs;
  /** A ripening chamber has no core. */
  isOfCore: boolean;
  /** The core cannot get colder than its colder medium. */
  isChill: boolean;
  /** Empty where nothing is read as a number. */
  unitsRead: (limit: Limit) => readonly string[];
  fault: (limit: Limit) => LimitFault | undefined;
  /** Contradictions in print; judging would still be possible. */
  slips: (limit: Limit) => LimitSlip[];
  temperatures: (limit: Limit) => readonly PrintedTemperature[];
  /** Ruled across a curve: of a long table the first and the last. */
  ruled: (limit: Limit) => readonly PrintedTemperature[];
  /** Empty without a table. */
  rows: (limit: Limit) => readonly DwellRow[];
};
