import { z } from 'zod';

/** Every expected problem: its status and what it says to a person. The details of the case come beside it. */
export const problems = {
  'not-signed-in': { status: 401, title: 'Sign in first.' },
  'wrong-user-name-or-password': { status: 401, title: 'The user name or the password is not right.' },
  'too-many-attempts': { status: 429, title: 'Too many tries. Wait a few minutes and try again.' },
  'not-allowed': { status: 403, title: 'Your role may not do this.' },
  'foreign-page': { status: 403, title: 'This request did not come from Larderbook’s own pages.' },
  'not-found': { status: 404, title: 'There is no such record in this establishment.' },
  'invalid-input': { status: 400, title: 'Some fields are not right.' },
  'body-too-large': { status: 413, title: 'That is more than one request may carry.' },
  'unsupported-media-type': { status: 415, title: 'The request has to be JSON.' },
  'sent-differently': { status: 409, title: 'This record was sent before with other content.' },
  'already-set-up': { status: 409, title: 'The shop is set up already. Sign in instead.' },
  'user-name-taken': { status: 409, title: 'That user name is taken. Choose another.' },
  'last-owner': { status: 409, title: 'A shop needs at least one owner.' },
  'already-amended': { status: 409, title: 'This entry has been corrected already. Correct the newer one.' },
  'implausible-value': { status: 422, title: 'That value is outside the plausible range. Check the unit, or say that you are sure.' },
  'temperature-missing': { status: 422, title: 'This item is received by temperature: measure it.' },
  'reason-missing': { status: 422, title: 'Say why.' },
  'more-than-there-is': { status: 422, title: 'That is more than is left.' },
  'receipt-refused': { status: 422, title: 'This delivery was refused and may not be used.' },
  'wrong-item': { status: 422, title: 'That is the wrong kind of item here.' },
  'into-itself': { status: 422, title: 'A lot cannot go into itself, neither directly nor through other lots.' },
  'trimmed-exceeds-taken': { status: 422, title: 'The trimmed weight cannot exceed the weight taken.' },
  'formula-incomplete': { status: 422, title: 'The formula does not add up.' },
  'no-formula': { status: 409, title: 'The product has no formula yet. Write one first.' },
  'no-plan-in-force': { status: 409, title: 'The product has no adopted plan. Adopt one first.' },
  'plan-incomplete': { status: 422, title: 'The plan is not complete.' },
  'plan-adopted-already': { status: 409, title: 'This version of the plan is adopted already.' },
  'lot-code-taken': { status: 409, title: 'That lot code is taken.' },
  'no-such-control-point': { status: 422, title: 'The plan of this lot has no such control point.' },
  'wrong-kind-of-value': { status: 422, title: 'This control point asks for another kind of value.' },
  'stage-ended-already': { status: 409, title: 'This stage was finished already.' },
  'actions-missing': { status: 409, title: 'Record the corrective action before closing.' },
  'product-undecided': { status: 409, title: 'Decide what becomes of all of the product before closing.' },
  'all-decided': { status: 409, title: 'All of this product is decided already.' },
  'wrong-product': { status: 422, title: 'That deviation does not stand on this product.' },
  'other-form': { status: 422, title: 'This deviation asks for another corrective action.' },
  'say-what-will-differ': { status: 422, title: 'This control point deviated before. Say what will be different this time.' },
  'not-condemned': { status: 422, title: 'Only what was condemned or called back is destroyed.' },
  'destroyed-already': { status: 409, title: 'Its destruction is recorded already.' },
  'deviation-closed': { status: 409, title: 'This deviation is closed.' },
  'review-incomplete': { status: 409, title: 'This lot cannot be cleared yet.' },
  'own-records': { status: 409, title: 'The review must be signed by somebody who made none of the lot’s records.' },
  'not-cleared': { status: 409, title: 'A lot that is not cleared may not be shipped.' },
  'no-such-set': { status: 404, title: 'There is no such set of limits.' },
  'limit-set-faulty': { status: 422, title: 'The set of limits is not sound.' },
  'edition-replaced-already': { status: 409, title: 'That edition has been replaced already. Start from the newest one.' },
  'cannot-be-worked-out': { status: 422, title: 'That cannot be worked out from these figures.' },
  'period-too-long': { status: 422, title: 'Ask for at most 400 days at a time.' },
} as const satisfies Record<string, { status: number; title: string }>;

export type ProblemCode = keyof typeof problems;
export const problemCodes = Object.keys(problems) as [ProblemCode, ...ProblemCode[]];

/** RFC 9457. `type` ends in the stable code; `errors` point at fields; `figures` are the numbers of the case. */
export const ProblemBody = z.object({
  type: z.string(),
  code: z.string(),
  status: z.number().int(),
  title: z.string(),
  detail: z.string().optional(),
  instance: z.string().optional(),
  errors: z.array(z.object({ pointer: z.string(), detail: z.string() })).optional(),
  figures: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
});
export type ProblemBody = z.output<typeof ProblemBody>;
