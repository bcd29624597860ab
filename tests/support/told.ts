import type { CriticalLimit, Told, Verdict } from '@larderbook/haccp';
import { accountTeller, limitTeller, teller, type Voice } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';

const voice: Voice = { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' };
const verdicts = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, voice);
const { tell } = verdicts;

/** A limit as a page shows it, in every unit its figures are printed in. */
export const printed = (limit: CriticalLimit): string => limitTeller(allWords.limits.en, voice).formatPrinted(limit).join('; ');

/** An account as a page shows it. */
export const tellAccount = accountTeller(wordsTogether('entries', 'limits', 'items', 'review-findings', 'accounts').en, verdicts, voice);

const isVerdict = (value: object): value is Verdict => 'kind' in value && 'notes' in value && 'finding' in value;

/** The same with every verdict in words. */
type InWords<Answer> = Answer extends { finding: string; kind: unknown; notes: unknown }
  ? Omit<Answer, 'notes' | 'running'> & Told
  : Answer extends object
    ? { [Name in keyof Answer]: InWords<Answer[Name]> }
    : Answer;

/** What the server answers with its verdicts put into words, as a page shows them. */
export function told<Answer>(answer: Answer, limit?: CriticalLimit): InWords<Answer> {
  if (Array.isArray(answer)) return answer.map((each: unknown) => told(each, limit)) as InWords<Answer>;
  if (typeof answer !== 'object' || answer === null) return answer as InWords<Answer>;
  if (isVerdict(answer)) return { ...answer, ...tell(answer, limit) } as InWords<Answer>;
  const own = 'limit' in answer && typeof answer.limit === 'object' ? (answer.limit as CriticalLimit) : limit;
  return Object.fromEntries(Object.entries(answer).map(([name, each]) => [name, told(each, own)])) as InWords<Answer>;
}
