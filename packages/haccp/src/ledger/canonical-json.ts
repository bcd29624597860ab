const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/**
 * RFC 8785: no white space, members sorted by UTF-16 code units, numbers and strings as ECMAScript writes them.
 * Undefined members are left out. Throws a TypeError on what JSON cannot carry without loss: NaN, infinities, lone
 * surrogates, BigInt, undefined in a list, and anything but plain objects, lists, texts, numbers, booleans and null.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return canonicalNumber(value);
  if (typeof value === 'string') return canonicalText(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && isPlain(value)) return canonicalObject(value);
  throw new TypeError(`Canonical JSON cannot carry ${describe(value)}`);
}

function canonicalObject(value: object): string {
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, member]) => `${canonicalText(name)}:${canonicalJson(member)}`);
  return `{${members.join(',')}}`;
}

function canonicalNumber(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`Canonical JSON cannot carry ${value}`);
  return JSON.stringify(value);
}

function canonicalText(value: string): string {
  if (LONE_SURROGATE.test(value)) throw new TypeError('Canonical JSON cannot carry half a character (a lone surrogate)');
  return JSON.stringify(value);
}

function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

const describe = (value: unknown): string =>
  typeof value === 'object' ? `a ${value?.constructor?.name ?? 'thing'}` : `a value of type ${typeof value}`;
