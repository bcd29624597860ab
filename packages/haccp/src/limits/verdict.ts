import type { Source } from './source';

/** Doubt is never met: only `met` clears anything. */
export type VerdictKind = 'met' | 'missed' | 'undetermined';

/** A verdict that explains itself: every sentence is ready for screen and paper. */
export type Verdict = {
  kind: VerdictKind;
  /** What was measured: "151.5 °F", "156.25 ppm", "47 min at or above 150 °F". */
  measured: string;
  /** The limit as its source prints it: "≥ 160 °F". */
  limit: string;
  /** By how much: "8.5 °F short", "12 min to spare". Absent when nothing usable was measured. */
  margin?: string;
  /** One sentence: why this verdict. */
  because: string;
  /** What to do now, when there is something to do. */
  next?: string;
  /** The assumption taken where readings were thin, and figures shown for information only. */
  notes: string[];
  source: Source;
  /** Present while a stage runs: the bound still to be reached, and the instant (epoch ms) by which it must be. */
  running?: {
    stage: string;
    bound: string;
    deadline?: number;
    /** When the stage began, in the worst case (epoch ms). */
    since?: number;
    /** While a temperature is held: the instant (epoch ms) at which it has been held long enough, if it stays. */
    until?: number;
  };
  /** Of a chill that is missed and not finished: it goes on, and what is missed may grow. */
  still?: 'cooling';
  /** Of a series: the readings used, how many were left out, and the instants (epoch ms) of the first and the last. */
  restsOn?: { readings: number; leftOut: number; from: number; to: number };
  /** With several probes: the one whose verdict this is. */
  probe?: string;
  /**
   * The margin as a number in the limit's own small unit (ms, hundredths, …), negative when short: only to find the
   * nearest miss.
   */
  spare?: number;
};
