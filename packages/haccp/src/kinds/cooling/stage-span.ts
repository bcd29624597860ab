import type { VerdictKind } from '../../limits/verdict';
import type { Degrees, PrintedTemperature } from '../../quantity/temperature';
import type { Passing } from './passing';

export type StageFinding =
  | 'in time'
  | 'too late'
  | 'still above'
  | 'ended above'
  | 'not shown'
  | 'gap'
  | 'start unknown'
  | 'end of cooking late'
  | 'end of cooking unknown'
  | 'nothing since cooking'
  | 'running'
  | 'overdue'
  | 'not begun';

/** Its clock goes on; where chilling has not begun, it has none yet and is awaited all the same. */
export const GOING_ON: readonly StageFinding[] = ['running', 'overdue', 'start unknown', 'end of cooking late', 'nothing since cooking'];
export const AWAITED: readonly StageFinding[] = [...GOING_ON, 'not begun'];

/** To be drawn. Epoch ms, in the worst case the readings allow. */
export type StageSpan = {
  /** A stage counted in all begins with the first. Absent where the clock starts when cooking ends. */
  from?: PrintedTemperature;
  to: PrintedTemperature;
  /** Counted with the stages before it. */
  inAll?: boolean;
  startAt?: number;
  endAt?: number;
  deadline?: number;
  /** By straight lines: for information. */
  straight?: { startAt: number; endAt?: number };
  /** Readings either side of start and end, and estimates between. */
  passings?: { start?: Passing; end?: Passing };
  /** Longest time without a reading, where longer than tolerated (ms). */
  gap?: number;
  finding: StageFinding;
  verdict: VerdictKind;
};

export type CoolingContext = {
  /** Declared by the operator. */
  ended: boolean;
  /** Epoch ms. */
  now?: number;
  /** End of cooking (epoch ms). */
  startAt?: number;
  /** The air or water, where measured. */
  chiller?: Degrees;
};

export const VERDICT_OF: Record<StageFinding, VerdictKind> = {
  'in time': 'met',
  'too late': 'missed',
  'still above': 'missed',
  'ended above': 'missed',
  'not shown': 'undetermined',
  gap: 'undetermined',
  'start unknown': 'undetermined',
  'end of cooking late': 'undetermined',
  'end of cooking unknown': 'undetermined',
  'nothing since cooking': 'undetermined',
  running: 'undetermined',
  overdue: 'undetermined',
  'not begun': 'undetermined',
};
