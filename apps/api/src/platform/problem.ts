import { problems, type ProblemBody, type ProblemCode } from '@larderbook/contracts';
import type { Voice } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { sayTold, type Told } from './told';

export type Located = Told & { pointer: string };

const log: Voice = { language: 'en', timeZone: 'UTC', timeStyle: 'international' };

export class Problem extends Error {
  private readonly details: readonly Told[];
  private readonly errors: readonly Located[];

  /** @param at the field that all details are about, or details that each name one */
  constructor(
    readonly code: ProblemCode,
    details: Told | readonly Told[] = [],
    at: string | readonly Located[] = [],
  ) {
    const all = [details].flat().map(({ code: what, figures }): Told => ({ code: what, figures }));
    super([allWords.problems.en[code], ...all.map(sayTold(log))].join(' '));
    this.details = all;
    this.errors = typeof at === 'string' ? all.map((each) => ({ pointer: at, ...each })) : at;
  }

  get status(): number {
    return problems[this.code];
  }

  /** RFC 9457 defines this body. */
  body(instance?: string, voice = log): ProblemBody {
    const { code, status, details, errors } = this;
    const said = sayTold(voice);
    return {
      type: `https://larderbook.invalid/problems/${code}`,
      code,
      status,
      title: allWords.problems[voice.language][code],
      ...(details.length > 0 && { detail: details.map(said).join(' '), details: [...details] as ProblemBody['details'] }),
      ...(errors.length > 0 && { errors: errors.map((each) => ({ ...each, detail: said(each) })) as ProblemBody['errors'] }),
      instance,
    };
  }
}
