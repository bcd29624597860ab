import type { z } from 'zod';

/** Each fault lists its figures. packages/messages has its text in every language, or types fail. */
const faults = {
  'choose-or-enter': [],
  'not-right': [],
  'write-a-name': [],
  'give-date-and-time': [],
  'check-the-year': [],
  'give-a-date': [],
  'whole-pieces': [],
  'weight-as-number': [],
  'weight-above-zero': [],
  'temperature-as-number': [],
  'give-a-percentage': [],
  'above-zero': [],
  'not-below-zero': [],
  'give-a-number': [],
  'value-as-number': [],
  'temperature-in-one-unit': [],
  'number-of-logs': [],
  'most-twenty-logs': [],
  'give-the-thickness': [],
  'name-the-authority': [],
  'name-the-source': [],
  'source-of-own-figures': [],
  'as-its-source-prints': [],
  'choose-the-substance': [],
  'whole-degree-hours': [],
  'statement-to-confirm': [],
  'gap-of-readings': [],
  'length-of-time': [],
  'what-is-compared': [],
  'one-reading-at-least': [],
  'one-weight-at-least': [],
  'pressure-or-height': [],
  'height-of-the-place': [],
  'how-thick-the-pieces': [],
  'user-name-letters': [],
  'password-length': [],
  'zone-by-region': [],
  'one-role-at-least': [],
  'pattern-such-as': [],
  'what-was-seen': [],
  'one-deviation-at-least': [],
  'each-deviation-once': [],
  'why-decided': [],
  'lot-or-delivery': [],
  'release-stands-on': [],
  'basis-of-release-only': [],
  'only-delivery-goes-back': [],
  'only-lot-reworked': [],
  'why-corrected': [],
  'how-destroyed': [],
  'why-taken-back': [],
  'what-will-differ': [],
  'what-was-the-cause': [],
  'how-under-control': [],
  'what-prevents-it': [],
  'no-harmful-product': [],
  'how-set-apart': [],
  'may-be-distributed': [],
  'nothing-adulterated': [],
  'belongs-in-the-plan': [],
  'what-was-done': [],
  'what-about-product': [],
  'choose-at-least-one': [],
  'date-year-month-day': [],
  'small-letters': [],
  'what-it-is-about': [],
  'where-support-is-filed': [],
  'what-it-weighs': [],
  'how-it-is-known': [],
  'name-the-edition': [],
  'choose-a-set': [],
  'add-a-package': [],
  'each-packing-once': [],
  'name-what-it-lies-in': [],
  'why-voided': [],
  'substance-with-percentage': [],
  'describe-as-ingredient': [],
  'more-than-the-whole': [],
  'receiving-by-range': [],
  'supplier-lot-from-label': [],
  'why-entry-corrected': [],
  'give-the-minutes': [],
  'whole-minutes': [],
  'one-minute-at-least': [],
  'most-three-days': [],
  'give-the-humidity': [],
  'write-what-you-sign': [],
  'choose-published-limit': [],
  'lot-code-letters': [],
  'delivery-or-earlier-lot': [],
  'choose-the-readings': [],
  'each-reading-once': [],
  'give-trimmed-meat': [],
  'give-how-many-packages': [],
  'give-net-weight': [],
  'give-the-yield': [],
  'give-the-amount': [],
  'what-has-to-hold': [],
  'what-has-support': [],
  'product-code-letters': [],
  'one-line-at-least': [],
  'name-the-hazard': [],
  'enter-how-thick': [],
  'too-thin': [],
  'no-piece-so-thick': [],
  'enter-how-many-minutes': [],
  'most-31-days': [],
  'enter-how-many-times': [],
  'whole-times': [],
  'once-at-least': [],
  'hazard-it-controls': [],
  'one-limit-at-least': [],
  'what-is-measured': [],
  'how-it-is-measured': [],
  'how-often': [],
  'by-whom': [],
  'what-to-do-when-missed': [],
  'who-eats-it': [],
  'one-step-at-least': [],
  'type-code-or-name': [],
  'lot-of-the-supplier': [],
  'at-most': ['most'],
  'at-least': ['least'],
  'not-below': ['least'],
  'not-above': ['most'],
  'at-most-characters': ['most'],
  'at-most-entries': ['most'],
  'at-most-percent': ['most'],
  'at-most-times': ['most'],
  'at-most-lines': ['most'],
  'at-most-readings': ['most'],
  'at-most-weights': ['most'],
  'at-most-figures': ['most'],
  'at-most-decimals': ['most'],
} as const satisfies Record<string, readonly string[]>;

export type FaultCode = keyof typeof faults;
type FiguresOf<Code extends FaultCode> = Record<(typeof faults)[Code][number], number>;

type Fault = { code: FaultCode; figures?: Record<string, number> };

/** Zod carries a fault as text. */
export const fault = <Code extends FaultCode>(
  code: Code,
  ...[figures]: (typeof faults)[Code] extends readonly [] ? [] : [FiguresOf<Code>]
): string => carryFault({ code, figures });

export const carryFault = ({ code, figures }: Fault): string => (figures ? `${code} ${JSON.stringify(figures)}` : code);

/** Undefined for any text that carries no fault. */
export function readFault(text: string): Fault | undefined {
  const [code = ''] = text.split(' ', 1);
  if (!isFault(code)) return undefined;
  return text === code ? { code } : { code, figures: JSON.parse(text.slice(code.length)) as Record<string, number> };
}

const isFault = (code: string): code is FaultCode => Object.hasOwn(faults, code);

/** A schema without a fault of its own gets a general one. */
export function faultOf(issue: z.core.$ZodIssue): Fault {
  const own = readFault(issue.message);
  if (own) return own;
  if (/^Invalid (input|option).*(received undefined|expected one of)/.test(issue.message)) return { code: 'choose-or-enter' };
  if (issue.code === 'too_big') return { code: most[issue.origin] ?? 'at-most', figures: { most: Number(issue.maximum) } };
  if (issue.code === 'too_small' && issue.origin === 'number') return { code: 'at-least', figures: { least: Number(issue.minimum) } };
  return { code: issue.code === 'too_small' ? 'choose-or-enter' : 'not-right' };
}

const most: Record<string, FaultCode> = { string: 'at-most-characters', array: 'at-most-entries' };
