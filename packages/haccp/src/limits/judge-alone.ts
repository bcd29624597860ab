import type { KnownAlone, ReadAlone } from '../kinds/judge';
import { isReadingLimit, readingJudgeOf } from '../kinds/reading-judges';
import type { CriticalLimit } from './limit';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

/** One value or answer by itself, against a limit. */
export const judgeAlone = (one: ReadAlone, limit: CriticalLimit, known: KnownAlone): Verdict =>
  isReadingLimit(limit) ? readingJudgeOf(limit)(one, limit, known) : notJudgedSo(limit);

/** An adopted plan asks for the record its limits are judged from; should one not, that is doubt, never met. */
export const notJudgedSo = (limit: CriticalLimit): Verdict => ({
  kind: 'undetermined',
  measured: 'nothing usable',
  limit: sayLimit(limit),
  because: 'This limit cannot be judged from what this control point records.',
  next: 'Correct the plan.',
  notes: [],
  source: limit.source,
});
