import type { InputOf, ProblemBody, RouteShape } from '@larderbook/contracts';
import type { Say, WordsOf } from '@larderbook/messages';
import { ApiProblem } from '../api/api-problem';
import { check, fieldErrors, type FieldErrors } from '../api/check';
import { sayFault } from '../ui/fault-words';

/** A sentence, and one beside each field; the form keeps what was typed. */
export type Refused = { code?: ProblemBody['code']; words: string; fields: FieldErrors };

export function refusedByServer(problem: ProblemBody): Refused {
  const fields = fieldErrors(new ApiProblem(problem));
  return { code: problem.code, words: inOne([problem.detail ?? problem.title, ...Object.values(fields)]), fields };
}

/** What the server could never take is not kept. */
export function refusedByContract<R extends RouteShape>({ body }: R, input: InputOf<R>, say: Say<WordsOf<'faults'>>): Refused | undefined {
  const fields = body && check(body, input).errors;
  return fields && { code: 'invalid-input', words: inOne(Object.values(fields).map((said) => sayFault(said, say))), fields };
}

const inOne = (sentences: string[]): string => [...new Set(sentences)].join(' ');
