import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from './canonical-json';

test('RFC 8785, section 3.2.2: the sample object', () => {
  const input: unknown = JSON.parse(String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`);
  expect(canonicalJson(input)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' + String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  );
});

test('RFC 8785, section 3.2.3: members are sorted by UTF-16 code units', () => {
  const input = {
    '\u20ac': 'Euro Sign',
    '\r': 'Carriage Return',
    '\ufb33': 'Hebrew Letter Dalet With Dagesh',
    '1': 'One',
    '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control',
    '\u00f6': 'Latin Small Letter O With Diaeresis',
  };
  expect(Object.values(JSON.parse(canonicalJson(input)) as object)).toHaveLength(7);
  expect([...canonicalJson(input).matchAll(/:"([^"]+)"/g)].map(([, value]) => value)).toEqual([
    'Carriage Return',
    'One',
    'Control',
    'Latin Small Letter O With Diaeresis',
    'Euro Sign',
    'Emoji: Grinning Face',
    'Hebrew Letter Dalet With Dagesh',
  ]);
});

test.each([
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
])('RFC 8785, appendix B: the number with the bits %s', (bits, text) => {
  expect(canonicalJson(numberOf(bits))).toBe(text);
});

test.each([
  ['NaN (RFC 8785, appendix B)', numberOf('7fffffffffffffff')],
  ['infinity (RFC 8785, appendix B)', numberOf('7ff0000000000000')],
  ['a lone high surrogate', 'a\ud800'],
  ['a lone low surrogate in a name', { '\udc00': 1 }],
  ['undefined in a list', [undefined]],
  ['undefined alone', undefined],
  ['a BigInt', { grams: 1n }],
  ['a date', { at: new Date(0) }],
  ['a function', { run: () => 1 }],
])('%s is refused', (_case, value) => {
  expect(() => canonicalJson(value)).toThrow(TypeError);
});

test('undefined members are left out', () => {
  expect(canonicalJson({ b: undefined, a: [{ c: undefined }] })).toBe('{"a":[{}]}');
});

test('the order in which members were written does not matter, and nothing is lost', () => {
  fc.assert(
    fc.property(fc.jsonValue({ stringUnit: 'binary', noUnicodeString: false }), (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      expect(canonicalJson(reversed(value))).toBe(canonicalJson(value));
    }),
  );
});

function numberOf(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, member]) => [name, reversed(member)]),
  );
}

test('a thing without any class is refused like one of a class', () => {
  expect(() => canonicalJson(Object.create(Object.create(null)))).toThrow('Canonical JSON cannot carry a thing');
});
