import { carryFault, faultOf } from '@larderbook/contracts';
import type { z } from 'zod';
import { ApiProblem } from './api-problem';

/**
 * By field: a fault of the contract, which the field puts into words, or a sentence. Inner fields are joined by dots:
 * `weight.value`.
 */
export type FieldErrors = Record<string, string>;

/** Uses the contract's own schema before anything is kept. */
export function check<S extends z.ZodType>(
  schema: S,
  draft: unknown,
): { value: z.output<S>; errors?: undefined } | { value?: undefined; errors: FieldErrors } {
  const parsed = schema.safeParse(draft);
  if (parsed.success) return { value: parsed.data };
  return { errors: first(parsed.error.issues.map((issue) => [issue.path.join('.'), carryFault(faultOf(issue))])) };
}

/** Errors of a problem that the server sent back. */
export function fieldErrors(error: unknown): FieldErrors {
  if (!(error instanceof ApiProblem)) return {};
  return first((error.problem.errors ?? []).map(({ pointer, detail }) => [pointer.replace(/^[/#]+/, '').replaceAll('/', '.'), detail]));
}

/** The first complaint about a field is shown. */
const first = (all: [string, string][]): FieldErrors => Object.fromEntries(all.toReversed());
