import type { ProblemBody } from '@larderbook/contracts';

/** RFC 9457: the sentence is for people, the code for us. */
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

/** No answer, or one that is not our server's (a gateway, the page of a guest network). */
export class NoConnection extends TypeError {
  override readonly name = 'NoConnection';
}
