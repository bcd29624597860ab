import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees } from '../../quantity/degrees';
import { impossibleAs } from '../../quantity/possible';
import { boundsAllowing, judgeRange } from './judge-range';
import type { RangeLimit } from './range-limit';
import { plain } from '../../limits/measurement';
import { plainly } from '../../limits/plainly.test-data';

/** "0.01 °F short" or "0 to spare", as the figures of a verdict have it. */
const found = (kind: string, margin: string) => {
  const [, by, side] = /^(.*) (short|over|to spare)$/.exec(margin) ?? [];
  const excluded = /^not (above|below) (.*)$/.exec(margin);
  if (excluded) return { kind, finding: `range-not-${excluded[1]}`, bound: excluded[2]?.replace('pH 4.4', '4.4 pH') };
  const amount = by?.includes(' ') ? by : `${by} ratio`;
  return side === 'to spare' ? { kind, spare: amount } : { kind, finding: side === 'short' ? 'range-below' : 'range-above', by: amount };
};

const source = { citation: 'an example', edition: 'none', confirmed: false };
const cookedThrough: RangeLimit = { kind: 'range', measured: 'temperature', min: { '°F': 16000, '°C': 7110 }, source };
const chilled: RangeLimit = { kind: 'range', measured: 'temperature', max: { '°F': 4000, '°C': 440 }, source };
const fermented: RangeLimit = { kind: 'range', measured: 'pH', min: 4600, max: 5300, source };

test.each([
  ['exactly on the printed °F', degrees(160, '°F'), 'met', '0 °F to spare'],
  ['exactly on the printed °C, though it converts to 159.98 °F', degrees(71.1, '°C'), 'met', '0 °C to spare'],
  ['a hundredth above', degrees(160.01, '°F'), 'met', '0.01 °F to spare'],
  ['a hundredth short in °F', degrees(159.99, '°F'), 'missed', '0.01 °F short'],
  ['a hundredth short in °C', degrees(71.09, '°C'), 'missed', '0.01 °C short'],
  ['far short', degrees(151.5, '°F'), 'missed', '8.5 °F short'],
])('a core temperature %s', (_case, reading, kind, margin) => {
  expect(plainly(judgeRange(reading, cookedThrough))).toMatchObject(found(kind, margin));
});

test.each([
  ['on the bound', degrees(40, '°F'), 'met'],
  ['just above', degrees(40.01, '°F'), 'missed'],
  ['on the bound in °C', degrees(4.4, '°C'), 'met'],
  ['just above in °C', degrees(4.41, '°C'), 'missed'],
])('chilled meat %s', (_case, reading, kind) => {
  expect(judgeRange(reading, chilled).kind).toBe(kind);
});

test.each([
  ['nothing on the display', undefined],
  ['no number', { hundredths: NaN, unit: '°F' as const }],
  ['half a hundredth', { hundredths: 16000.5, unit: '°F' as const }],
  ['an open circuit', degrees(999, '°C')],
  ['colder than any freezer', degrees(-40.01, '°C')],
  ['a pH where a temperature is asked', plain(7)],
])('%s is undetermined', (_case, reading) => {
  expect(judgeRange(reading, cookedThrough)).toMatchObject({
    kind: 'undetermined',
    finding: expect.stringMatching(/^value-(missing|untrue)$/) as string,
  });
});

test('a verdict has what was read, by how much it misses and which figure', () => {
  expect(judgeRange(degrees(151.5, '°F'), cookedThrough)).toEqual({
    kind: 'missed',
    finding: 'range-below',
    figures: { read: { value: '151.5', unit: '°F' }, by: { value: '8.5', unit: '°F' }, bound: { value: '160', unit: '°F' } },
    spare: -4250,
    notes: [],
  });
});

test('a figure the source prints in one unit is converted exactly, and the margin never flatters', () => {
  const onlyFahrenheit: RangeLimit = { ...cookedThrough, min: { '°F': 16000 } };
  expect(plainly(judgeRange(degrees(71.11, '°C'), onlyFahrenheit))).toMatchObject({ kind: 'missed', by: '0.01 °C' });
  expect(plainly(judgeRange(degrees(71.12, '°C'), onlyFahrenheit))).toMatchObject({ kind: 'met', spare: '0 °C' });
});

test.each([
  ['on the upper bound', 5.3, 'met', '0 to spare'],
  ['just above', 5.301, 'missed', '0.001 over'],
  ['on the lower bound', 4.6, 'met', '0 to spare'],
  ['just below', 4.599, 'missed', '0.001 short'],
  ['in the middle, nearer the upper bound', 5.1, 'met', '0.2 to spare'],
])('a pH %s', (_case, value, kind, margin) => {
  expect(plainly(judgeRange(plain(value), fermented))).toMatchObject(found(kind, margin));
});

test('a pH that cannot be, and a limit without a figure, are undetermined', () => {
  expect(judgeRange(plain(14.001), fermented).kind).toBe('undetermined');
  expect(judgeRange(plain(5), { kind: 'range', measured: 'pH', source }).kind).toBe('undetermined');
  expect(judgeRange(degrees(5, '°C'), { kind: 'range', measured: 'temperature', min: 5000, source }).kind).toBe('undetermined');
  expect(judgeRange(degrees(5, '°C'), { kind: 'range', measured: 'temperature', min: {}, source }).kind).toBe('undetermined');
});

test('warmer never turns a met minimum into a missed one, until no core is so hot', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -4000, max: 29_000 }),
      fc.nat(1000),
      fc.constantFrom('°C' as const, '°F' as const),
      (hundredths, more, unit) => {
        const met = judgeRange({ hundredths, unit }, cookedThrough).kind === 'met';
        const warmer = { hundredths: hundredths + more, unit };
        if (met && !impossibleAs('core', warmer)) expect(judgeRange(warmer, cookedThrough).kind).toBe('met');
      },
    ),
  );
});

/** Scotland keeps food hot "above 63 °C", England "at or above" it. */
const hotInScotland: RangeLimit = {
  kind: 'range',
  measured: 'temperature',
  min: { '°C': 6300 },
  signs: { min: '>' },
  source,
};
const acid: RangeLimit = { kind: 'range', measured: 'pH', max: 4400, signs: { max: '<' }, source };
test.each([
  ['on a figure that is excluded', degrees(63, '°C'), hotInScotland, 'missed', 'not above 63 °C'],
  ['on it in °F', degrees(145.4, '°F'), hotInScotland, 'missed', 'not above 145.4 °F'],
  ['a hundredth above', degrees(63.01, '°C'), hotInScotland, 'met', '0.01 °C to spare'],
  ['a hundredth below', degrees(62.99, '°C'), hotInScotland, 'missed', '0.01 °C short'],
  ['on a pH that is excluded', plain(4.4), acid, 'missed', 'not below pH 4.4'],
  ['a thousandth below', plain(4.399), acid, 'met', '0.001 to spare'],
])('a strict sign, %s', (_case, measurement, limit, kind, margin) => {
  expect(plainly(judgeRange(measurement, limit))).toMatchObject(found(kind, margin));
});

test.each([
  ['a least and a most on one figure, the most excluded', { min: 4600, max: 4600, signs: { max: '<' as const } }, 'missed'],
  ['a temperature as the bound of a pH', { max: { '°C': 440 } }, 'undetermined'],
  ['a pH as the bound of a temperature', { measured: 'temperature' as const, max: 4600 }, 'undetermined'],
])('%s is never met', (_case, odd, kind) => {
  const limit: RangeLimit = { kind: 'range', measured: 'pH', source, ...odd };
  const measured = limit.measured === 'pH' ? plain(4.6) : degrees(4.6, '°C');
  expect(judgeRange(measured, limit).kind).toBe(kind);
});

test('a loss in percent is said in percent, and so is what is missing', () => {
  const dried: RangeLimit = { kind: 'range', measured: 'percent', min: 30_000, source };
  expect(plainly(judgeRange(plain(28.5), dried))).toMatchObject({ kind: 'missed', read: '28.5 %', by: '1.5 %' });
});

test('a pH with four decimals is refused, not rounded', () => {
  expect(() => plain(4.6001)).toThrow('4.6001 is not a number with at most three decimals');
});

describe('a thermometer’s error allowed for', () => {
  // FSIS-GD-2021-14, p. 20: 165 °F and a thermometer good to ± 1 °F ask for 166 °F.
  const hot: RangeLimit = { kind: 'range', measured: 'temperature', min: { '°F': 16_500, '°C': 7390 }, source };
  const cold: RangeLimit = { kind: 'range', measured: 'temperature', max: { '°F': 4000 }, source };
  const one = { temperature: degrees(1, '°F') };

  test.each([
    ['on the limit with its error', degrees(166, '°F'), hot, 'met'],
    ['just inside', degrees(166.01, '°F'), hot, 'met'],
    ['just outside', degrees(165.99, '°F'), hot, 'missed'],
    ['on it in °C, the error rounded to the stricter side', degrees(74.46, '°C'), hot, 'met'],
    ['just outside in °C', degrees(74.45, '°C'), hot, 'missed'],
    ['at most 40 °F asks for 39 °F', degrees(39, '°F'), cold, 'met'],
    ['just above it', degrees(39.01, '°F'), cold, 'missed'],
  ] as const)('%s', (_case, measured, limit, kind) => {
    expect(judgeRange(measured, limit, one)).toMatchObject({
      kind,
      notes: [{ code: 'allowed-for-temperature', figures: { error: { value: '1', unit: '°F' } } }],
    });
  });

  test('no error and a value that is no temperature are judged plainly', () => {
    expect(judgeRange(degrees(165, '°F'), hot, { temperature: degrees(0, '°F') })).toEqual(judgeRange(degrees(165, '°F'), hot));
    const acid: RangeLimit = { kind: 'range', measured: 'pH', max: 4600, source };
    expect(judgeRange(plain(4.6), acid, one)).toEqual(judgeRange(plain(4.6), acid));
  });

  test('an error that is no number is never met', () => {
    expect(judgeRange(degrees(190, '°F'), hot, { temperature: { hundredths: NaN, unit: '°F' } }).kind).not.toBe('met');
  });
});

describe('the error of a meter allowed for', () => {
  const acid: RangeLimit = { kind: 'range', measured: 'pH', max: 5300, source };
  const dry: RangeLimit = { kind: 'range', measured: 'aw', max: 850, source };
  const errors = { temperature: degrees(1, '°F'), pH: plain(0.05), aw: plain(0.003) };

  test.each([
    ['pH on what is left', plain(5.25), acid, 'met', '0 to spare'],
    ['pH within the error of the limit', plain(5.251), acid, 'missed', '0.001 over'],
    ['pH on the limit itself', plain(5.3), acid, 'missed', '0.05 over'],
    ['water activity on what is left', plain(0.847), dry, 'met', '0 to spare'],
    ['water activity within the error', plain(0.848), dry, 'missed', '0.001 over'],
    ['a least is raised', plain(4.64), { ...acid, max: undefined, min: 4600 }, 'missed', '0.01 short'],
  ] as const)('%s', (_case, measured, limit, kind, margin) => {
    expect(plainly(judgeRange(measured, limit, errors))).toMatchObject(found(kind, margin));
  });

  test('is said', () => {
    expect(judgeRange(plain(5.2), acid, errors).notes).toEqual([
      { code: 'allowed-for-pH', figures: { error: { value: '0.05', unit: 'ratio' } } },
    ]);
  });

  test('a percentage has none, and bounds of another kind stay as they are', () => {
    const dried: RangeLimit = { kind: 'range', measured: 'percent', min: 30_000, source };
    expect(judgeRange(plain(30), dried, errors).kind).toBe('met');
    expect(boundsAllowing({ ...acid, max: { '°F': 4000 } }, plain(0.05)).max).toEqual({ '°F': 4000 });
    expect(boundsAllowing(acid, degrees(1, '°F')).max).toBe(5300);
  });
});
