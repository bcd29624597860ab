import type { CriticalLimit } from './limit';
import type { Source } from './source';
import type { Remark, Verdict, VerdictKind } from './verdict';

export type Told = {
  kind: VerdictKind;
  /** "151.5 °F", "156.25 ppm", "47 min at or above 150 °F". */
  measured: string;
  /** As its source prints it: "≥ 160 °F". */
  limit: string;
  /** "8.5 °F short", "12 min to spare". Absent when nothing usable was measured. */
  margin?: string;
  because: string;
  next?: string;
  notes: string[];
  source: Source;
  running?: { stage: string; bound: string; deadline?: number; since?: number; until?: number };
  spare?: number;
  still?: 'cooling';
  probe?: string;
};

export type Tell = (verdict: Verdict, limit?: CriticalLimit) => Told;

export type TellRemark = (remark: Remark) => string;
