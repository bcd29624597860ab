import type { KnownAlone, ReadAlone } from '../kinds/judge';
import { isReadingLimit, readingJudgeOf } from '../kinds/reading-judges';
import type { CriticalLimit } from './limit';
import type { Verdict } from './verdict';

export const judgeAlone = (one: ReadAlone, limit: CriticalLimit, known: KnownAlone): Verdict =>
  isReadingLimit(limit) ? readingJudgeOf(limit)(one, limit, known) : NOT_JUDGED_SO;

/** An adopted plan asks for the records of its limits; a missing one is doubt, never met. */
export const NOT_JUDGED_SO: Verdict = { kind: 'undetermined', finding: 'not-judged-so', figures: {}, notes: [] };
