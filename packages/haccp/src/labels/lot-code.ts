import type { CodedAs } from '../limits/coded';
import { asGiven } from '../quantity/quantities';
import { dayNumber, dayOfYear } from './civil-date';

/** `product` is its short code. */
export type LotCodeParts = { date: string; n: number; product?: string };

/** Why a pattern, or what it is filled with, gives no code. */
export type LotCodeFault = CodedAs<
  | 'lot-code-character'
  | 'lot-code-too-long'
  | 'no-day-of-the-calendar'
  | 'no-number-of-a-lot'
  | 'number-not-apart'
  | 'pattern-needs-day'
  | 'pattern-needs-number'
  | 'placeholder-unknown'
  | 'product-code-missing'
>;

/** GS1 General Specifications, application identifier (10), X..20. */
const LONGEST = 20;
const ALLOWED = /^[A-Z0-9-]+$/;
const PLACEHOLDER = /\{([^{}]*)\}/g;
/** Checks a pattern: the longest day, number and product code. */
const WIDEST: LotCodeParts = { date: '2026-12-31', n: 99, product: 'AAAA' };

const FILL: Record<string, (parts: LotCodeParts) => string | undefined> = {
  YYYY: ({ date }) => date.slice(0, 4),
  YY: ({ date }) => date.slice(2, 4),
  MM: ({ date }) => date.slice(5, 7),
  DD: ({ date }) => date.slice(8, 10),
  DDD: ({ date }) => String(dayOfYear(date)).padStart(3, '0'),
  n: ({ n }) => String(n),
  nn: ({ n }) => String(n).padStart(2, '0'),
  nnn: ({ n }) => String(n).padStart(3, '0'),
  product: ({ product }) => product,
};

/** `lotCode('{YY}{DDD}-{n}', { date: '2026-05-10', n: 3 })` is "26130-3". */
export function lotCode(pattern: string, parts: LotCodeParts): string | LotCodeFault {
  const fault = patternFault(pattern) ?? partsFault(pattern, parts);
  if (fault) return fault;
  const code = fill(pattern, parts);
  return codeFault(code) ?? code;
}

/** Undefined when every lot can get a code of its own. */
export function patternFault(pattern: string): LotCodeFault | undefined {
  const names = [...pattern.matchAll(PLACEHOLDER)].map(([, name = '']) => name);
  const unknown = names.find((name) => !Object.hasOwn(FILL, name));
  if (unknown !== undefined)
    return {
      code: 'placeholder-unknown',
      figures: {
        placeholder: `{${unknown}}`,
        known: Object.keys(FILL)
          .map((name) => `{${name}}`)
          .join(', '),
      },
    };
  if (!names.some((name) => /^n+$/.test(name))) return { code: 'pattern-needs-number' };
  const hasYear = names.includes('YY') || names.includes('YYYY');
  const hasDay = names.includes('DDD') || (names.includes('MM') && names.includes('DD'));
  if (!hasYear || !hasDay) return { code: 'pattern-needs-day' };
  if (areJoined(pattern)) return { code: 'number-not-apart' };
  return codeFault(fill(pattern, WIDEST));
}

function partsFault(pattern: string, { date, n, product }: LotCodeParts): LotCodeFault | undefined {
  if (dayNumber(date) === undefined) return { code: 'no-day-of-the-calendar', figures: { date } };
  if (!Number.isSafeInteger(n) || n < 1) return { code: 'no-number-of-a-lot', figures: { number: asGiven(n, 'ratio') } };
  if (pattern.includes('{product}') && !product) return { code: 'product-code-missing' };
  return undefined;
}

function codeFault(code: string): LotCodeFault | undefined {
  if (code.length > LONGEST) return { code: 'lot-code-too-long', figures: { lot: code, length: code.length, most: LONGEST } };
  const odd = [...code].find((character) => !ALLOWED.test(character));
  if (odd !== undefined) return { code: 'lot-code-character', figures: { character: odd } };
  return undefined;
}

/** Digits of the number could be read as digits of its neighbour. */
const areJoined = (pattern: string): boolean => /\{n+\}(\{|[0-9])|\{product\}\{n+\}/.test(pattern);

/** Only for a checked pattern and checked parts: every placeholder is known and filled. */
const fill = (pattern: string, parts: LotCodeParts): string =>
  pattern.replace(PLACEHOLDER, (_, name: string) => FILL[name]?.(parts) as string);
