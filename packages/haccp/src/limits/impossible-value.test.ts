import { expect, test } from 'vitest';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { degrees } from '../quantity/degrees';
import { judgeFigureRead } from '../kinds/figure/judge-figure-read';
import { judgeRange } from '../kinds/range/judge-range';
import type { RangeLimit } from '../kinds/range/range-limit';
import { plain, type Measurement } from './measurement';
import { plainly } from './plainly.test-data';

const source = { citation: 'an example', edition: 'none', confirmed: false };
const heldCold: RangeLimit = { kind: 'range', measured: 'temperature', max: { '°F': 4100, '°C': 500 }, source };
const frozen: RangeLimit = { ...heldCold, max: { '°F': 0, '°C': -1800 } };
const heldHot: RangeLimit = { kind: 'range', measured: 'temperature', min: { '°F': 13_500, '°C': 5700 }, source };
const oven: RangeLimit = { ...heldHot, min: { '°F': 25_000 } };
const walkIn: RangeLimit = { ...heldCold, min: { '°C': -50 } };
const fermented: RangeLimit = { kind: 'range', measured: 'pH', max: 5300, source };
const dry: RangeLimit = { kind: 'range', measured: 'aw', max: 850, source };
const strong: RangeLimit = { kind: 'range', measured: 'percent', min: 10_000, source };

test.each<[string, Measurement, RangeLimit]>([
  ['-40 °C in a cold store', degrees(-40, '°C'), heldCold],
  ['-40 °F in a cold store', degrees(-40, '°F'), heldCold],
  ['a hundredth below what is kept cold', degrees(-30.01, '°C'), heldCold],
  ['140 °F typed as °C, held hot', degrees(140, '°C'), heldHot],
  ['165 °F typed as °C', degrees(165, '°C'), heldHot],
  ['pH 0.53', plain(0.53), fermented],
  ['pH 0.55', plain(0.55), fermented],
  ['a water activity of 0.085', plain(0.085), dry],
])('%s is within the limit and cannot be true: it is not met', (_case, value, limit) => {
  const verdict = judgeRange(value, limit);
  expect(verdict).toMatchObject({ kind: 'undetermined', finding: 'value-impossible' });
});

test.each<[string, Measurement, RangeLimit]>([
  ['pH 99', plain(99), fermented],
  ['a water activity of 3', plain(3), dry],
  ['101 %', plain(101), strong],
])('%s is undetermined, whatever the bound', (_case, value, limit) => {
  expect(judgeRange(value, limit).kind).toBe('undetermined');
});

test.each<[string, Measurement, RangeLimit, string]>([
  ['the edge of what is kept cold', degrees(-30, '°C'), heldCold, 'met'],
  ['the edge of a core', degrees(230, '°F'), heldHot, 'met'],
  ['a freezer at its coldest', degrees(-40, '°C'), frozen, 'met'],
  ['what is too warm by far is still a miss', degrees(200, '°F'), heldCold, 'missed'],
  ['an oven, which is no core', degrees(300, '°F'), oven, 'met'],
  ['what lies between both bounds of a store', degrees(0, '°C'), walkIn, 'met'],
  ['a store with both bounds', degrees(-40, '°C'), walkIn, 'missed'],
  ['the most acid food', plain(2), fermented, 'met'],
  ['the driest food', plain(0.1), dry, 'met'],
  ['all of it', plain(100), strong, 'met'],
])('%s is judged as it is', (_case, value, limit, kind) => {
  expect(judgeRange(value, limit).kind).toBe(kind);
});

const mpr: FigureLimit = { kind: 'figure', of: 'moisture to protein', unit: 'ratio', max: 1900, source };
const figure = (unit: FigureLimit['unit'], bounds: Partial<FigureLimit>): FigureLimit => ({ ...mpr, unit, ...bounds });

test.each([
  ['a ratio of 0.21', 0.21, mpr, 'undetermined'],
  ['a ratio of 0.75', 0.75, mpr, 'met'],
  ['a ratio of another kind, by its own bound', 0.21, figure('ratio', { max: 250 }), 'met'],
  ['a water activity of 3 as a figure', 3, figure('aw', { max: undefined, min: 100 }), 'undetermined'],
  ['pH 0.55 as a figure', 0.55, figure('pH', { max: 5300 }), 'undetermined'],
  ['germs, of which nothing is known', 0, figure('cfu/g', { max: 100_000 }), 'met'],
])('%s', (_case, value, limit, kind) => {
  expect(judgeFigureRead({ value, unit: limit.unit }, limit).kind).toBe(kind);
});

test('its figures are what it cannot be and between what that lies, in the unit read', () => {
  expect(plainly(judgeFigureRead({ value: 101, unit: '%' }, figure('%', { max: undefined, min: 10_000 })))).toMatchObject({
    value: '101 %',
    of: 'possible-share',
    highest: '100 %',
  });
  expect(plainly(judgeRange(degrees(-40, '°F'), heldCold))).toMatchObject({
    ...{ value: '-40 °F', of: 'possible-cold', lowest: '-22 °F', highest: '230 °F' },
  });
  expect(plainly(judgeFigureRead({ value: 0.21, unit: 'ratio' }, mpr))).toMatchObject({
    ...{ value: '0.21 ratio', of: 'possible-ratio', lowest: '0.401 ratio', highest: '20 ratio' },
  });
});
