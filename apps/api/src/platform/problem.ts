import { problems, type ProblemBody, type ProblemCode } from '@larderbook/contracts';
import type { Language } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

type Case = { detail?: string; errors?: { pointer: string; detail: string }[]; figures?: Record<string, string | number> };

/** An expected problem: a stable code, what it says to a person, and the figures of this case. */
export class Problem extends Error {
  constructor(
    readonly code: ProblemCode,
    private readonly about: Case = {},
  ) {
    super(`${allWords.problems.en[code]} ${about.detail ?? ''}`.trim());
  }

  get status(): number {
    return problems[this.code];
  }

  /** The body of RFC 9457, with its title in the language of whoever asked. */
  body(instance?: string, language: Language = 'en'): ProblemBody {
    const { code, status, about } = this;
    const title = allWords.problems[language][code];
    return { type: `https://larderbook.invalid/problems/${code}`, code, status, title, ...about, instance };
  }
}
