import { z } from 'zod';
import { account } from './account';

/** packages/messages has the texts under the same codes. */
export const problems = {
  'not-signed-in': 401,
  'wrong-user-name-or-password': 401,
  'too-many-attempts': 429,
  'not-allowed': 403,
  'foreign-page': 403,
  'not-found': 404,
  'invalid-input': 400,
  'body-too-large': 413,
  'unsupported-media-type': 415,
  'sent-differently': 409,
  'already-set-up': 409,
  'user-name-taken': 409,
  'last-owner': 409,
  'already-amended': 409,
  'still-in-use': 409,
  'taken-back-already': 409,
  'not-cleared-then': 409,
  'in-the-future': 422,
  'implausible-value': 422,
  'temperature-missing': 422,
  'reason-missing': 422,
  'more-than-there-is': 422,
  'receipt-refused': 422,
  'wrong-item': 422,
  'into-itself': 422,
  'trimmed-exceeds-taken': 422,
  'formula-incomplete': 422,
  'no-formula': 409,
  'no-plan-in-force': 409,
  'plan-incomplete': 422,
  'plan-adopted-already': 409,
  'lot-code-taken': 409,
  'no-such-control-point': 422,
  'wrong-kind-of-value': 422,
  'stage-ended-already': 409,
  'actions-missing': 409,
  'product-undecided': 409,
  'all-decided': 409,
  'wrong-product': 422,
  'other-form': 422,
  'say-what-will-differ': 422,
  'not-condemned': 422,
  'destroyed-already': 409,
  'deviation-closed': 409,
  'review-incomplete': 409,
  'own-records': 409,
  'not-cleared': 409,
  'no-such-set': 404,
  'limit-set-faulty': 422,
  'edition-replaced-already': 409,
  'cannot-be-calculated': 422,
  'period-too-long': 422,
} as const satisfies Record<string, number>;

export type ProblemCode = keyof typeof problems;
export const problemCodes = Object.keys(problems) as [ProblemCode, ...ProblemCode[]];

const plain = z.union([
  z.string(),
  z.number(),
  z.object({ value: z.string(), unit: z.string() }),
  z.object({ at: z.union([z.number(), z.string()]) }),
  z.object({ day: z.string() }),
  z.object({ anyOf: z.array(z.string()) }),
  z.array(z.string()),
  account,
]);
const figure = z.union([
  plain,
  /** Words within the sentence, by their code. */
  z.object({ code: z.string(), figures: z.record(z.string(), plain).optional() }),
]);
const told = { code: z.string(), figures: z.record(z.string(), figure).optional() };

/**
 * RFC 9457. `type` ends in the code. `detail` is in the reader's language, `details` its codes and figures. `errors`
 * point at fields.
 */
export const ProblemBody = z.object({
  type: z.string(),
  code: z.string(),
  status: z.number().int(),
  title: z.string(),
  detail: z.string().optional(),
  instance: z.string().optional(),
  details: z.array(z.object(told)).optional(),
  errors: z.array(z.object({ pointer: z.string(), detail: z.string(), ...told })).optional(),
});
export type ProblemBody = z.output<typeof ProblemBody>;
