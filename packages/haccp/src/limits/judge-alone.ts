import type { KnownAlone, ReadAlone } from '../kinds/judge';
import { isReadingLimit, readingJudgeOf } from '../kinds/reading-judges';
import type { CriticalLimit } from './limit';
import type { Verdict } from './verdict';

/** One value or answer by itself, against a limit. */
export const judgeAlone = (one: ReadAlone, limit: CriticalLimit, known: KnownAlone): Verdict =>
  isReadingLimit(limit) ? readingJudgeOf(limit)(one, limit, known) : NOT_JUDGED_SO;

/** An adopted plan asks for the record its limits are judged from; should one not, that is doubt, never met. */
export const NOT_JUDGED_SO: Verdict = { kind: 'undetermined', finding: 'not-judged-so', figures: {}, notes: [] };
