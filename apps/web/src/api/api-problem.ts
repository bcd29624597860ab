import type { ProblemBody } from '@larderbook/contracts';

/** The API answered with a problem (RFC 9457): its sentence is for people, its code is for us. */
export class ApiProblem extends Error {
  override readonly name = 'ApiProblem';

  constructor(readonly problem: ProblemBody) {
    super(problem.detail ?? problem.title);
  }

  get status() {
    return this.problem.status;
  }

  get code() {
    return this.problem.code;
  }
}

/** No answer, or an answer that is not the record book's own (a gateway, the page of a guest network). */
export class NoConnection extends TypeError {
  override readonly name = 'NoConnection';
}
