import { expect, test } from 'vitest';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { atMostOneLogGrown } from '../limit-sets/fsis-processes';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import { judgeBesideSurroundings } from './judge-beside-surroundings';
import type { CurveContext } from './curve-context';
import type { CurveLimit } from './limit';
import type { Remark } from './verdict';

const COLDER = { code: 'doubt-colder-than-around', figures: { count: 1 } };
const codeOf = (note: Remark | undefined) => (typeof note === 'object' ? note.code : note);

const MINUTE = 60_000;
const at = (minutes: number, fahrenheit: number): CurveReading => ({
  at: minutes * MINUTE,
  temperature: degrees(fahrenheit, '°F'),
});
const air = { setPoint: degrees(34, '°F'), readings: [at(0, 33.5)] };
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}, limit: CurveLimit = coolingUncured) =>
  judgeBesideSurroundings(readings, [limit], { ended: true, surroundings: air, ...context })[0];

const slow = [at(0, 140), at(10, 130), at(30, 110), at(55, 94.7)];

/** A core that meets option 1, every fifteen minutes. */
const chilled = Array.from({ length: 24 }, (_, i) => at(i * 15, Math.round(34 + 106 * 0.8 ** i)));

test('31 °F after 94.7 °F in air of 33.5 °F ends neither stage', () => {
  const verdict = judge([...slow, at(95, 31)], { ended: false, now: 95 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, to: { value: '80', unit: '°F' } },
      deadline: 6000000,
      since: 600000,
    },
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '94.7', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '2700000', unit: 'ms' },
      left: { value: '300000', unit: 'ms' },
      toGo: { value: '2700000', unit: 'ms' },
    },
  });
  expect(verdict?.notes).toContainEqual(COLDER);
  expect(judge([...slow, at(95, 31)])?.kind).not.toBe('met');
});

test.each<[string, number[]]>([
  ['−40 °F beside 33.5 °F', [33.5, -40]],
  ['−40 °F and nothing else', [-40]],
  ['500 °F and nothing else', [500]],
])('what it lies in, misread as %s, makes 31 °F no core', (_case, values) => {
  const surroundings = { setPoint: degrees(34, '°F'), readings: values.map((value, i) => at(i, value)) };
  expect(judge([...slow, at(95, 31)], { surroundings })?.kind).not.toBe('met');
  expect(judge(chilled, { surroundings })?.kind).toBe('met');
});

test('a chiller read colder than its set point, and again, chills further', () => {
  const surroundings = { setPoint: degrees(34, '°F'), readings: [at(0, 26), at(5, 24)] };
  expect(judge([...chilled, at(360, 30)], { surroundings })?.notes).not.toContainEqual(COLDER);
  const unset = { readings: [at(0, 26)] };
  expect(judge([...chilled, at(360, 23)], { surroundings: unset })?.notes).toContainEqual(COLDER);
  expect(judge([...chilled, at(360, 23)], { surroundings: { readings: [] } })?.notes).not.toContainEqual(COLDER);
});

test('what would be missed without it is not met with it', () => {
  const grown: CurveLimit = { ...atMostOneLogGrown, log10: 300, longestGapSeconds: 36_000 };
  const readings = [at(0, 130), at(20, 31), at(600, 40)];
  expect(judge(readings, { surroundings: undefined }, grown)?.kind).toBe('met');
  expect(judge(readings, {}, grown)).toMatchObject({ kind: 'undetermined', finding: 'only-with-colder' });
});

test('what is met without it stays met, and it is said', () => {
  expect(judge(chilled)).toMatchObject({ kind: 'met', notes: expect.not.arrayContaining([COLDER]) });
  const verdict = judge([...chilled, at(360, 30)]);
  expect(verdict?.kind).toBe('met');
  expect(verdict?.notes).toContainEqual(COLDER);
});

test('what is missed with it stays missed', () => {
  const late = [...slow, at(200, 85), at(700, 31), { at: 701, temperature: degrees(999, '°C') }];
  expect(judge(late)?.kind).toBe('missed');
});

test.each<[string, Partial<CurveContext>, CurveLimit]>([
  ['nobody knows what it lies in', { surroundings: undefined }, coolingUncured],
  ['an error that is no figure judges nothing', { instrumentError: { hundredths: NaN, unit: '°F' } }, coolingUncured],
  [
    'it is cooked and not chilled',
    {},
    { kind: 'dwell', rows: [{ at: { '°F': 3000 }, seconds: 0 }], longestGapSeconds: 9000, source: coolingUncured.source },
  ],
])('nothing is doubted by it where %s', (_case, context, limit) => {
  const verdict = judge([...chilled, at(360, 30)], context, limit);
  expect(verdict?.notes.filter((note) => codeOf(note) === COLDER.code)).toHaveLength('instrumentError' in context ? 1 : 0);
});
