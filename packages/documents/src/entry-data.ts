import type { Source, Verdict } from '@larderbook/haccp';
import type { Instant, Signed } from './sheet-data';

/** A mistake put right by a later entry. Both values stay readable; the later one counts. */
export type AmendmentData = Signed & {
  /** What was amended: "value", "time taken", "probe". */
  field: string;
  /** As it stood, with its unit: "51.5 °F". */
  was: string;
  /** As it stands; absent when the entry was withdrawn. */
  now?: string;
  why: string;
};

/** What somebody said a reading was, afterwards: "not of the core". The reading stays; the last of them counts. */
export type ClarificationData = Signed & { word: string; why: string };

/** One value as somebody took it. `at` is when it was taken, by the clock of the device. */
export type ReadingData = Signed & {
  /** As it stands now, as entered: "151.5"; for an attestation "yes" or "no". */
  value: string;
  /** "°F", "pH"; empty for an attestation. */
  unit: string;
  /** Where or of what: "core, thickest link". */
  what?: string;
  instrument?: string;
  probe?: string;
  /** When it reached the server, given only if that was noticeably later. */
  receivedAt?: Instant;
  /** Who sent it, given only if it was another person. */
  sentBy?: string;
  /** What is odd about it, in words: "taken before the lot was started", "clock ahead by 3 h". */
  flags?: string[];
  note?: string;
  /** Present when the reading was judged by itself; a curve is judged as a whole. */
  verdict?: Verdict;
  /** Number of the deviation it opened. */
  deviation?: string;
  /** Oldest first. */
  amendments?: AmendmentData[];
  /** Oldest first. */
  clarifications?: ClarificationData[];
  /** Left out of every judgement, because it was not of the core; printed struck through. */
  isLeftOut?: boolean;
};

/** A verdict and the name of what it judges: "sodium nitrite"; with the number of the deviation it opened. */
export type JudgedData = { what: string; verdict: Verdict; deviation?: string };

/** A critical limit in force, and how it was judged here; no verdict when nothing has been judged yet. */
export type JudgedLimitData = {
  /** What the limit is of: "come-up", "core". */
  what?: string;
  /** As its source prints it: "≥ 145 °F for 4 min". */
  printed: string;
  source: Source;
  verdict?: Verdict;
  /** Number of the deviation it opened. */
  deviation?: string;
};

export type MonitoringData = { what: string; how: string; howOften: string; who: string };

export type InstrumentData = {
  name: string;
  /** "probe thermometer", "bench scale". */
  kind?: string;
  /** Newest calibration known when the sheet was printed; absent: never calibrated here. */
  calibrated?: Signed & {
    /** "reads 32.2 °F in ice water, within ± 1 °F". */
    result: string;
  };
  /** Set when it was out of date at the time of use, in words. */
  overdue?: string;
};

/** Something somebody declared, in their words. */
export type StatementData = Signed & { text: string };

/** One deviation with the four parts of 9 CFR 417.3(a). Each part holds what was entered so far, oldest first. */
export type DeviationData = {
  number: string;
  /** "CCP 2 · Cooking". */
  controlPoint: string;
  opened: Signed;
  /** What was missed, by how much, from which source. */
  verdict: Verdict;
  /** 417.3(a)(1): the cause is identified and eliminated. */
  cause: StatementData[];
  /** 417.3(a)(2): the control point is under control again. */
  underControl: StatementData[];
  /** 417.3(a)(3): measures to prevent recurrence. */
  prevention: StatementData[];
  /** 417.3(a)(4): no product that is injurious or adulterated because of it enters commerce. */
  product: StatementData[];
  dispositions: DispositionData[];
  /** Absent while the deviation is open. */
  closed?: Signed & { statement?: string };
};

export type DispositionData = Signed & {
  /** "release", "rework", "reprocess", "condemn". */
  decision: string;
  quantity: string;
  why?: string;
};
