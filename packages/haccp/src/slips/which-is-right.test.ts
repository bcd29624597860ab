import { expect, test } from 'vitest';
import { onCommonScale } from '../quantity/convert-degrees';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import type { Piece } from '../thermal/piece';
import { isChill } from './coldest-around';
import { isOfCore } from './speed-beside';
import { whichIsRight, type BesideReading } from './which-is-right';

const MINUTE = 60_000;
const read = (value: number) => ({ value: String(value), unit: '°F' });
const minutes = (count: number) => ({ value: String(count * MINUTE), unit: 'ms' });
const at = (minutes: number, value: number, unit: '°F' | '°C' = '°F'): CurveReading => ({
  at: minutes * MINUTE,
  temperature: degrees(value, unit),
});
const air = { setPoint: degrees(34, '°F'), readings: [at(0, 33.5)] };
const chill = (...before: CurveReading[]): BesideReading => ({ before, surroundings: air, error: 0, isChilling: true });
const cook = (...before: CurveReading[]): BesideReading => ({ before, error: 0, isChilling: false });
const going = [at(0, 130), at(60, 94.7)];

test('31 with °F chosen after a core of 94.7 °F in air of 33.5 °F asks whether it was 31 °C, which lies on the curve', () => {
  expect(whichIsRight(at(75, 31), chill(...going))).toEqual({
    because: { code: 'colder-than-around', figures: { read: read(31) } },
    meant: [degrees(31, '°C')],
  });
});

test('38 under °F while the chill is still hot is far from its course; 38 °C lies on it', () => {
  const { surroundings: _, ...unknown } = chill(at(0, 140), at(30, 120));
  expect(whichIsRight(at(60, 38), unknown)).toEqual({
    because: { code: 'far-from-course', figures: { read: read(38), last: read(120), ago: minutes(30) } },
    meant: [degrees(38, '°C')],
  });
});

test.each<[string, CurveReading, BesideReading, number | undefined]>([
  ['71 under °F at the end of a cook', at(70, 71), cook(at(0, 140), at(60, 155)), 71],
  ['155 under °C, read in °F', at(70, 155, '°C'), cook(at(0, 60, '°C'), at(60, 67, '°C')), 155],
  ['80 under °C in a chill', at(40, 80, '°C'), chill(at(0, 32, '°C'), at(30, 29, '°C')), 80],
  ['a held temperature, read in the other unit', at(70, 60), cook(at(0, 140), at(60, 140)), 60],
  ['after a single reading', at(30, 40), chill(at(0, 120)), 40],
])('asks in the unit meant: %s', (_case, entered, beside, value) => {
  const other = entered.temperature.unit === '°F' ? '°C' : '°F';
  expect(whichIsRight(entered, beside)?.meant).toEqual([degrees(value as number, other)]);
});

test.each<[string, CurveReading, BesideReading]>([
  ['a chill as it goes', at(75, 88), chill(...going)],
  ['the air’s own temperature', at(400, 33.5), chill(...going)],
  ['within a degree of °C below it', at(400, 31.8), chill(...going)],
  ['the next morning', at(700, 39), chill(at(0, 150), at(15, 149))],
  ['a thin sausage that heats fast, after a slow start', at(90, 55, '°C'), cook(at(0, 12, '°C'), at(30, 14, '°C'))],
  ['a fall that fits in neither unit', at(65, 50), chill(...going)],
  ['nothing before it', at(0, 38), chill()],
  ['colder than the oven, of course', at(0, 31), { ...cook(), surroundings: air }],
  ['no number', { at: 0, temperature: { hundredths: NaN, unit: '°F' } }, chill(...going)],
  ['only later ones', at(-10, 131), chill(...going)],
])('says nothing about %s', (_case, entered, beside) => {
  expect(whichIsRight(entered, beside)).toBeUndefined();
});

test('colder than what it lies in asks even when the other unit explains nothing', () => {
  const beside = chill(at(0, 39), at(30, 37));
  expect(whichIsRight(at(60, 29), beside)).toMatchObject({ meant: [] });
  expect(whichIsRight(at(60, -40, '°C'), beside)).toMatchObject({ meant: [] });
  expect(whichIsRight(at(0, 20), chill())).toMatchObject({ meant: [degrees(20, '°C')] });
  expect(whichIsRight(at(0, -5), chill())).toMatchObject({ meant: [] });
});

test('the surroundings are as cold as the coldest read; their set point stands where nobody read them', () => {
  const beside = chill(...going);
  const unread = { setPoint: degrees(34, '°F'), readings: [] };
  expect(whichIsRight(at(75, 32.1), { ...beside, surroundings: unread })).toMatchObject({ because: { code: 'colder-than-around' } });
  expect(whichIsRight(at(400, 32.3), { ...beside, surroundings: unread })).toBeUndefined();
  expect(whichIsRight(at(400, 26.5), { ...beside, surroundings: { ...air, readings: [at(0, 33.5), at(60, 28)] } })).toBeUndefined();
  expect(whichIsRight(at(400, 20), { ...beside, surroundings: { readings: [] } })?.because).toBeUndefined();
});

const sausage: Piece = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } };
const roast: Piece = { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } };
const falling = [at(0, 140), at(30, 100), at(60, 78)];

test('what falls or rises faster than the core of the piece can asks, and proposes nothing that fits no better', () => {
  expect(whichIsRight(at(61, 37), { ...chill(...falling), piece: sausage })).toEqual({
    because: { code: 'falls-too-fast', figures: { read: read(37), last: read(78), ago: minutes(1) } },
    meant: [],
  });
  expect(whichIsRight(at(62, 168), { ...cook(at(0, 100), at(60, 121)), piece: roast })).toEqual({
    because: { code: 'rises-too-fast', figures: { read: read(168), last: read(121), ago: minutes(2) } },
    meant: [],
  });
  expect(whichIsRight(at(15, 40), { ...chill(at(0, 140)), piece: roast })).toMatchObject({
    because: { code: 'falls-too-fast' },
    meant: [degrees(40, '°C')],
  });
  expect(whichIsRight(at(25, 60), { ...cook(at(0, 100), at(20, 130)), piece: roast })?.meant).toEqual([degrees(60, '°C')]);
});

test('where the other unit fits the curve, that is asked first', () => {
  expect(whichIsRight(at(75, 31), { ...chill(...going), piece: roast })).toEqual({
    because: { code: 'colder-than-around', figures: { read: read(31) } },
    meant: [degrees(31, '°C')],
  });
  const { surroundings: _, ...unknown } = chill(at(0, 140), at(30, 120));
  expect(whichIsRight(at(60, 38), { ...unknown, piece: roast })).toMatchObject({
    because: { code: 'far-from-course', figures: { read: read(38), last: read(120), ago: minutes(30) } },
  });
});

test.each<[string, CurveReading, BesideReading]>([
  ['what a thinner piece may do', at(75, 37), { ...chill(...falling), piece: sausage }],
  [
    'a reading before which one lay in the air, and which fits those before it',
    at(63, 77),
    { ...chill(...falling, at(61, 37)), piece: sausage },
  ],
  [
    'one after a reading that a person said was not of the core',
    at(62, 76),
    { ...chill(...falling, { ...at(61, 150), word: 'not of the core' }), piece: roast },
  ],
  ['the first reading', at(0, 168), { ...cook(), piece: roast }],
  ['a fast rise of a piece that nobody knows', at(62, 168), cook(at(0, 100), at(60, 121))],
  [
    'a piece that is no figure',
    at(62, 168),
    { ...cook(at(0, 100), at(60, 121)), piece: { shape: 'slab', smallest: { value: NaN, unit: 'mm' } } },
  ],
])('the speed of the core says nothing about %s', (_case, entered, beside) => {
  expect(whichIsRight(entered, beside)).toBeUndefined();
});

test('a chill only falls: 79 °F well on the way down is never taken for 79 °C', () => {
  expect(whichIsRight(at(80, 79), { ...chill(at(0, 140)), piece: roast })).toBeUndefined();
  expect(whichIsRight(at(80, 79), chill(at(0, 139), at(10, 141)))).toBeUndefined();
});

test('a chill is where cooling or growth is judged, and a core where a curve is', () => {
  const source = { citation: 'an example', edition: 'none', confirmed: false };
  expect(isChill([{ kind: 'growth', species: 'beef', log10: 100, longestGapSeconds: 600, source }])).toBe(true);
  expect(isChill([{ kind: 'cooling', stages: [], longestGapSeconds: 600, source }])).toBe(true);
  expect(isChill([{ kind: 'dwell', rows: [], longestGapSeconds: 600, source }])).toBe(false);
  expect(isOfCore([{ kind: 'dwell', rows: [], longestGapSeconds: 600, source }])).toBe(true);
  expect(isOfCore([])).toBe(false);
});

test('an error that the plan states is allowed for', () => {
  const error = onCommonScale(degrees(36, '°F')); // ± 4 °F
  expect(whichIsRight(at(400, 29.5), { ...chill(...going), error })).toBeUndefined();
  expect(whichIsRight(at(400, 29.4), { ...chill(...going), error })).toMatchObject({ because: { code: 'colder-than-around' } });
});

test('while it heats, with one reading before, it goes as fast as is usual', () => {
  const before = [{ at: 0, temperature: { hundredths: 6000, unit: '°C' as const } }];
  const entered = { at: 10 * 60_000, temperature: { hundredths: 6800, unit: '°F' as const } };
  const asked = whichIsRight(entered, { before, error: 0, isChilling: false });
  expect(asked?.meant).toEqual([{ hundredths: 6800, unit: '°C' }]);
});
