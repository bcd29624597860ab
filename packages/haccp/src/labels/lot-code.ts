import { dayNumber, dayOfYear } from './civil-date';

/** `product` is its short code. */
export type LotCodeParts = { date: string; n: number; product?: string };

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

/** `lotCode('{YY}{DDD}-{n}', { date: '2026-05-10', n: 3 })` is "26130-3". Throws a RangeError that says why not. */
export function lotCode(pattern: string, parts: LotCodeParts): string {
  const fault = patternFault(pattern) ?? partsFault(pattern, parts);
  if (fault) throw new RangeError(fault);
  const code = fill(pattern, parts);
  const wrong = codeFault(code);
  if (wrong) throw new RangeError(wrong);
  return code;
}

/** Undefined when every lot can get a code of its own. */
export function patternFault(pattern: string): string | undefined {
  const names = [...pattern.matchAll(PLACEHOLDER)].map(([, name = '']) => name);
  const unknown = names.find((name) => !Object.hasOwn(FILL, name));
  if (unknown !== undefined)
    return `{${unknown}} is not known; use ${Object.keys(FILL)
      .map((name) => `{${name}}`)
      .join(', ')}.`;
  if (!names.some((name) => /^n+$/.test(name))) return 'The pattern needs {n}, so that two lots of a day differ.';
  const hasYear = names.includes('YY') || names.includes('YYYY');
  const hasDay = names.includes('DDD') || (names.includes('MM') && names.includes('DD'));
  if (!hasYear || !hasDay) return 'The pattern needs the year and the day, such as {YY}{DDD}, so that no code comes twice.';
  if (areJoined(pattern)) return 'Set {n} apart with - or a letter, so that no two lots can get the same code.';
  return codeFault(fill(pattern, WIDEST));
}

function partsFault(pattern: string, { date, n, product }: LotCodeParts): string | undefined {
  if (dayNumber(date) === undefined) return `"${date}" is not a day of the calendar.`;
  if (!Number.isSafeInteger(n) || n < 1) return `${n} is not the number of a lot; they count from 1.`;
  if (pattern.includes('{product}') && !product) return 'The pattern asks for a product code and there is none.';
  return undefined;
}

function codeFault(code: string): string | undefined {
  if (code.length > LONGEST) return `${code} has ${code.length} characters; a lot code has at most ${LONGEST}.`;
  const odd = [...code].find((character) => !ALLOWED.test(character));
  if (odd !== undefined) return `"${odd}" cannot stand in a lot code; use A to Z, 0 to 9 and -.`;
  return undefined;
}

/** Digits of the number could be read as digits of its neighbour. */
const areJoined = (pattern: string): boolean => /\{n+\}(\{|[0-9])|\{product\}\{n+\}/.test(pattern);

/** Only for a checked pattern and checked parts: every placeholder is known and filled. */
const fill = (pattern: string, parts: LotCodeParts): string =>
  pattern.replace(PLACEHOLDER, (_, name: string) => FILL[name]?.(parts) as string);
