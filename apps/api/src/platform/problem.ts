import { problems, type ProblemBody, type ProblemCode } from '@larderbook/contracts';

type Case = { detail?: string; errors?: { pointer: string; detail: string }[]; figures?: Record<string, string | number> };

/** An expected problem: a stable code, the sentence of the table in contracts, and the figures of this case. */
export class Problem extends Error {
  constructor(
    readonly code: ProblemCode,
    private readonly about: Case = {},
  ) {
    super(`${problems[code].title} ${about.detail ?? ''}`.trim());
  }

  get status(): number {
    return problems[this.code].status;
  }

  /** The body of RFC 9457. */
  body(instance?: string): ProblemBody {
    const { status, title } = problems[this.code];
    return { type: `https://larderbook.invalid/problems/${this.code}`, code: this.code, status, title, ...this.about, instance };
  }
}
