import type { Source, Told } from '@larderbook/haccp';
import type { Instant, Signed } from './sheet-data';

/** Both values stay readable; the later one counts. */
export type AmendmentData = Signed & {
  /** "value", "time taken", "probe". */
  field: string;
  /** With its unit: "51.5 °F". */
  was: string;
  entered?: Signed;
  /** Absent when the entry was voided. */
  now?: string;
  why: string;
};

/** For example "not of the core". The reading stays; the last clarification counts. */
export type ClarificationData = Signed & { word: string; why: string };

/** `at` is when it was taken, by the clock of the device. */
export type ReadingData = Signed & {
  /** As entered: "151.5"; "yes" or "no" for an attestation. */
  value: string;
  /** "°F", "pH"; empty for an attestation. */
  unit: string;
  /** "core, thickest link". */
  what?: string;
  instrument?: string;
  probe?: string;
  /** Given only if the server got it noticeably later. */
  receivedAt?: Instant;
  /** Given only if another person sent it. */
  sentBy?: string;
  /** In words: "taken before the lot was started", "clock ahead by 3 h". */
  flags?: string[];
  note?: string;
  /** Absent on a curve, which is judged as a whole. */
  verdict?: Told;
  /** Of the deviation it opened. */
  deviation?: string;
  /** Oldest first. */
  amendments?: AmendmentData[];
  /** Oldest first. */
  clarifications?: ClarificationData[];
  /** Not of the core: no limit is judged by it, and it is struck through. */
  isLeftOut?: boolean;
};

/** `what` is for example "sodium nitrite"; `deviation` is the number of the one it opened. */
export type JudgedData = { what: string; verdict: Told; deviation?: string };

export type JudgedLimitData = {
  /** "come-up", "core". */
  what?: string;
  /** As its source prints it: "≥ 145 °F for 4 min". */
  printed: string;
  source: Source;
  verdict?: Told;
  /** Of the deviation it opened. */
  deviation?: string;
};

export type MonitoringData = {
  what: string;
  how: string;
  howOften: string;
  /** "at least every 30 min". */
  fewest?: string;
  who: string;
};

export type CheckData = Signed & {
  /** "reads 32.2 °F in ice water, within ± 1 °F". */
  result: string;
  failed?: boolean;
  later?: boolean;
};

export type InstrumentData = {
  name: string;
  /** "probe thermometer", "bench scale". */
  kind?: string;
  /** Checks in force when it was used, oldest first, then the next one if it failed. Empty when none was known. */
  checks: CheckData[];
  /** This many more checks were passed. */
  between?: number;
  /** What was wrong when it was used, in words. */
  flagged: string[];
};

export type StatementData = Signed & { text: string };
/** The words are those of whoever corrected, voided or took it back. */
export type StruckData = StatementData & { how: 'corrected' | 'voided' | 'taken back' };

/** Oldest first. */
export type ActionPartData = { paragraph?: string; asks: string; said: (StatementData & { struck?: StruckData })[] };

export type DeviationData = {
  number: string;
  /** "CCP 2 · Cooking". */
  controlPoint: string;
  /** "Critical limit missed", answered under "9 CFR 417.3(a)". */
  kind: string;
  answeredUnder?: string;
  opened: Signed;
  /** By the records of now. */
  verdict: Told;
  /** Present where the verdict has changed since. */
  openedWith?: Told;
  /** "No. 3, Jan 12, 2026, lot 26012-1". */
  recurrence: string[];
  parts: ActionPartData[];
  /** The last action in one sentence, for where the deviation is only named. */
  done?: string;
  dispositions: DispositionData[];
  /** "25.9 lb of 28.7 lb". */
  undecided?: string;
  /** Absent while the deviation is open. */
  closed?: Signed & { statement?: string };
  /** Closings taken back, oldest first. */
  notClosed?: (Signed & { statement?: string; struck: StruckData })[];
};

export type DispositionData = Signed & {
  /** "release", "rework", "condemn", "return", "recall". */
  decision: string;
  /** "2.8 lb of lot 26060-1". */
  quantity: string;
  why?: string;
  /** Other deviations the decision speaks for: "No. 4, No. 5". */
  alsoFor?: string;
  destroyed?: StatementData;
  notDestroyed?: { destroyed: StatementData; voided: StruckData }[];
  voided?: StruckData;
  /** Condemned, and not yet destroyed. */
  toDestroy?: boolean;
};
