import type { CriticalLimit, Verdict } from '@larderbook/haccp';
import { teller } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

const { tell } = teller(
  { verdicts: allWords.verdicts.en, limits: allWords.limits.en },
  { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' },
);

const isVerdict = (value: object): value is Verdict => 'kind' in value && 'notes' in value && ('finding' in value || 'because' in value);

/** What the server answers with its verdicts put into words, as a page shows them. */
export function told<Answer>(answer: Answer, limit?: CriticalLimit): Answer {
  if (Array.isArray(answer)) return answer.map((each: unknown) => told(each, limit)) as Answer;
  if (typeof answer !== 'object' || answer === null) return answer;
  if (isVerdict(answer)) return { ...answer, ...tell(answer, limit) };
  const own = 'limit' in answer && typeof answer.limit === 'object' ? (answer.limit as CriticalLimit) : limit;
  return Object.fromEntries(Object.entries(answer).map(([name, each]) => [name, told(each, own)])) as Answer;
}
