import type { Source, Told } from '@larderbook/haccp';
import type { Instant, Signed } from './sheet-data';

/** A mistake put right by a later entry. Both values stay readable; the later one counts. */
export type AmendmentData = Signed & {
  /** What was corrected: "value", "time taken", "probe". */
  field: string;
  /** As it stood, with its unit: "51.5 °F". */
  was: string;
  /** Who had entered it so, and when. */
  entered?: Signed;
  /** As it stands; absent when the entry was voided. */
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
  verdict?: Told;
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
export type JudgedData = { what: string; verdict: Told; deviation?: string };

/** A critical limit in force, and how it was judged here; no verdict when nothing has been judged yet. */
export type JudgedLimitData = {
  /** What the limit is of: "come-up", "core". */
  what?: string;
  /** As its source prints it: "≥ 145 °F for 4 min". */
  printed: string;
  source: Source;
  verdict?: Told;
  /** Number of the deviation it opened. */
  deviation?: string;
};

export type MonitoringData = {
  what: string;
  how: string;
  howOften: string;
  /** The fewest readings, as a figure: "at least every 30 min". */
  fewest?: string;
  who: string;
};

/** A check of an instrument. */
export type CheckData = Signed & {
  /** "reads 32.2 °F in ice water, within ± 1 °F". */
  result: string;
  failed?: boolean;
  /** Made after the last use. */
  later?: boolean;
};

export type InstrumentData = {
  name: string;
  /** "probe thermometer", "bench scale". */
  kind?: string;
  /** In force when it was used, oldest first, and the next one after where that failed; empty: none was known. */
  checks: CheckData[];
  /** So many more, all of which it passed. */
  between?: number;
  /** What was wrong with it at a time of use, in words. */
  flagged: string[];
};

/** Something somebody declared, in their words. */
export type StatementData = Signed & { text: string };
/** Why something counts no more, in the words of whoever corrected it, voided it or took it back. */
export type StruckData = StatementData & { how: 'corrected' | 'voided' | 'taken back' };

/** What a corrective action has to say, and what was entered so far, oldest first. */
export type ActionPartData = { paragraph?: string; asks: string; said: (StatementData & { struck?: StruckData })[] };

/** One deviation with its corrective action, what becomes of the product, and its closing. */
export type DeviationData = {
  number: string;
  /** "CCP 2 · Cooking". */
  controlPoint: string;
  /** What kind it is, and by what it is answered: "Critical limit missed", "9 CFR 417.3(a)". */
  kind: string;
  answeredUnder?: string;
  opened: Signed;
  /** What was missed or seen, by how much, from which source: by the records of now. */
  verdict: Told;
  /** What it was opened with, where that has changed since. */
  openedWith?: Told;
  /** Earlier ones of the same control point: "No. 3, Jan 12, 2026, lot 26012-1". */
  recurrence: string[];
  parts: ActionPartData[];
  /** What was done last, in one sentence, for where the deviation is only named. */
  done?: string;
  dispositions: DispositionData[];
  /** What is still to decide: "25.9 lb of 28.7 lb". */
  undecided?: string;
  /** Absent while the deviation is open. */
  closed?: Signed & { statement?: string };
  /** Closings that were taken back, oldest first. */
  notClosed?: (Signed & { statement?: string; struck: StruckData })[];
};

export type DispositionData = Signed & {
  /** "release", "rework", "condemn", "return", "recall". */
  decision: string;
  /** "2.8 lb of lot 26060-1". */
  quantity: string;
  why?: string;
  /** The other deviations it speaks for: "No. 4, No. 5". */
  alsoFor?: string;
  destroyed?: StatementData;
  /** Records of its destruction that count no more, and why. */
  notDestroyed?: { destroyed: StatementData; voided: StruckData }[];
  /** The decision counts no more, and why. */
  voided?: StruckData;
  /** Condemned, and not yet destroyed. */
  toDestroy?: boolean;
};
