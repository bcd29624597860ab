import type { CriticalLimit } from './limit';
import type { Source } from './source';
import type { Remark, Verdict, VerdictKind } from './verdict';

/** A verdict in the words of one language, ready for screen and paper. */
export type Told = {
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
  notes: string[];
  source: Source;
  running?: { stage: string; bound: string; deadline?: number; since?: number; until?: number };
  spare?: number;
  still?: 'cooling';
  probe?: string;
};

/** Puts a verdict into words, with the limit it is a verdict on. */
export type Tell = (verdict: Verdict, limit?: CriticalLimit) => Told;

/** Puts one note into words. */
export type TellRemark = (remark: Remark) => string;
