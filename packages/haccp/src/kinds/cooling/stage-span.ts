import type { VerdictKind } from '../../limits/verdict';
import type { Degrees, PrintedTemperature } from '../../quantity/temperature';
import type { Passing } from './passing';

/** What was found about one cooling stage; each finding has one verdict. */
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

/**
 * One cooling stage on the time axis, ready to be drawn. Instants are epoch ms, in the worst case the readings allow.
 */
export type StageSpan = {
  /** What it is counted from: of a stage in all, where the first begins. Absent where the clock starts when cooking ends. */
  from?: PrintedTemperature;
  to: PrintedTemperature;
  /** Counted with the stages before it. */
  inAll?: boolean;
  startAt?: number;
  endAt?: number;
  deadline?: number;
  /** Start and end by straight lines between readings: for information. */
  straight?: { startAt: number; endAt?: number };
  /** The readings either side of the start and of the end, and the estimates between them. */
  passings?: { start?: Passing; end?: Passing };
  /** The longest time without a reading inside the stage, when it is longer than the limit tolerates (ms). */
  gap?: number;
  finding: StageFinding;
  verdict: VerdictKind;
};

export type CoolingContext = {
  /** The operator declared the stage finished. */
  ended: boolean;
  /** The present instant, when there is one (epoch ms). */
  now?: number;
  /** When cooking ended (epoch ms). */
  startAt?: number;
  /** The air or water it is chilled in, when that is measured. */
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
