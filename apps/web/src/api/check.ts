import { carryFault, faultOf } from '@larderbook/contracts';
import type { z } from 'zod';
import { ApiProblem } from './api-problem';

/**
 * What is wrong with which field: a fault of the contract, which the field puts into words, or a sentence. Fields inside
 * fields are joined by dots: `weight.value`.
 */
export type FieldErrors = Record<string, string>;

/** Checks a form by the contract's own schema before anything is kept: its value, or what is wrong beside which field. */
export function check<S extends z.ZodType>(
  schema: S,
  draft: unknown,
): { value: z.output<S>; errors?: undefined } | { value?: undefined; errors: FieldErrors } {
  const parsed = schema.safeParse(draft);
  if (parsed.success) return { value: parsed.data };
  return { errors: first(parsed.error.issues.map((issue) => [issue.path.join('.'), carryFault(faultOf(issue))])) };
}

/** The same from a problem the server sent back. */
export function fieldErrors(error: unknown): FieldErrors {
  if (!(error instanceof ApiProblem)) return {};
  return first((error.problem.errors ?? []).map(({ pointer, detail }) => [pointer.replace(/^[/#]+/, '').replaceAll('/', '.'), detail]));
}

/** One thing at a time: the first complaint about a field is shown. */
const first = (all: [string, string][]): FieldErrors => Object.fromEntries(all.toReversed());
