import type { CriticalLimit } from '../limits/limit';
import type { LimitFault, LimitSlip } from '../limits/limit-fault-code';
import type { PrintedTemperature } from '../quantity/temperature';
import type { DwellRow } from './dwell/dwell-limit';

export type LimitKind = CriticalLimit['kind'];
export type LimitOf<K extends LimitKind> = Extract<CriticalLimit, { kind: K }>;

/** The record of a control point that a limit is judged from. */
export type TakenAs = 'value' | 'curve' | 'weighings' | 'attestation';

/** What a kind of limit is, wherever one is written or asked for. */
export type Kind<Limit> = {
  takenAs: TakenAs;
  /** The core of a piece is read. A chamber in which something ripens has none. */
  isOfCore: boolean;
  /** The piece lies in what is colder: its core cannot get colder than that. */
  isChill: boolean;
  /** The units it is read in; none where nothing is read as a number. */
  unitsRead: (limit: Limit) => readonly string[];
  /** Why nothing could ever be judged against it; undefined when it is sound. */
  fault: (limit: Limit) => LimitFault | undefined;
  /** What contradicts itself in what is printed, though something could be judged by it. */
  slips: (limit: Limit) => LimitSlip[];
  /** Every temperature it prints, in its order. */
  temperatures: (limit: Limit) => readonly PrintedTemperature[];
  /** The temperatures that a curve is ruled with: of a long table the first and the last. */
  ruled: (limit: Limit) => readonly PrintedTemperature[];
  /** The rows of its table; none where it prints no table. */
  rows: (limit: Limit) => readonly DwellRow[];
};
