const SHORTEST_DECIMAL = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/;

/**
 * A number as an exact count of its last decimal place: `scaled(151.5, 2)` is 15150. It reads the shortest decimal
 * text, because 1.005 × 1000 in floating point is 1004.9999…. Undefined when not finite, with more decimals, or too
 * large to count exactly.
 */
export function scaled(value: number, decimals: number): number | undefined {
  const quick = quickCount(value, decimals);
  if (quick !== undefined) return quick;
  const digits = scaledDigits(value, decimals);
  if (digits === undefined) return undefined;
  const count = Number(digits);
  return Number.isSafeInteger(count) ? count : undefined;
}

const SCALES = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000] as const;

/**
 * The same count without the text. Division is rounded once, so a count of at most 15 digits that divides back to the
 * number is the one its text holds.
 */
function quickCount(value: number, decimals: number): number | undefined {
  const scale = SCALES[decimals];
  if (scale === undefined) return undefined;
  const count = Math.round(value * scale);
  return Math.abs(count) < 1e15 && count / scale === value ? count + 0 : undefined; // + 0: never −0
}

export function scaledBig(value: number, decimals: number): bigint | undefined {
  const quick = quickCount(value, decimals);
  if (quick !== undefined) return BigInt(quick);
  const digits = scaledDigits(value, decimals);
  return digits === undefined ? undefined : BigInt(digits);
}

export const hasAtMostDecimals = (value: number, decimals: number): boolean => scaledDigits(value, decimals) !== undefined;

function scaledDigits(value: number, decimals: number): string | undefined {
  const match = SHORTEST_DECIMAL.exec(String(value));
  if (!match) return undefined;
  const [, sign, whole = '', fraction = '', exponent = '0'] = match;
  const places = fraction.length - Number(exponent);
  if (places > decimals) return undefined;
  const digits = whole + fraction + '0'.repeat(decimals - places);
  return /^0+$/.test(digits) ? '0' : sign + digits;
}

/** Without idle zeros: `decimalText(15150, 2)` is "151.5". */
export function decimalText(count: number | bigint, decimals: number): string {
  const sign = count < 0 ? '-' : '';
  const digits = String(count)
    .replace('-', '')
    .padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const fraction = digits.slice(digits.length - decimals).replace(/0+$/, '');
  return sign + whole + (fraction ? `.${fraction}` : '');
}
