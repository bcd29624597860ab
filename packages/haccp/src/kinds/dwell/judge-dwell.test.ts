import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../../limit-sets/fsis-meat';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import { judgeDwell } from './judge-dwell';

const curve = (unit: TemperatureUnit, ...points: [seconds: number, value: number][]): CurveReading[] =>
  points.map(([seconds, value]) => ({ at: seconds * 1000, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], ended = true, now?: number) => judgeDwell(readings, cookedMeat65Log, { ended, now });

test.each([
  ['exactly its 4 min at 145 °F', curve('°F', [0, 145], [240, 145]), 'met'],
  ['a second less', curve('°F', [0, 145], [239, 145]), 'missed'],
  ['a hundredth of a degree less at one end', curve('°F', [0, 145], [240, 144.99]), 'missed'],
  ['exactly its 4 min at the printed 62.8 °C', curve('°C', [0, 62.8], [240, 62.8]), 'met'],
  ['a hundredth of a degree less in °C', curve('°C', [0, 62.79], [240, 62.8]), 'missed'],
  ['between two rows, for the time of the lower one', curve('°F', [0, 150.9], [67, 150.9]), 'met'],
  ['between two rows, for less', curve('°F', [0, 150.9], [66, 150.9]), 'missed'],
  ['one reading at a row without holding time', curve('°F', [0, 158]), 'met'],
  ['one reading just under it', curve('°F', [0, 157.99]), 'missed'],
  ['long, but a tenth below the lowest row', curve('°F', [0, 129.9], [600, 129.9], [1200, 129.9]), 'missed'],
])('held for %s', (_case, readings, kind) => {
  expect(judge(readings).kind).toBe(kind);
});

test('a met hold says how long, at what, and what is to spare', () => {
  expect(judge(curve('°F', [0, 120], [600, 146], [750, 146.5], [900, 145.5]))).toMatchObject({
    kind: 'met',
    finding: 'dwell-held',
    figures: {
      held: { value: '300000', unit: 'ms' },
      at: { value: '145', unit: '°F' },
      needed: { value: '240000', unit: 'ms' },
      spare: { value: '60000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 120], [600, 161.3]))).toMatchObject({
    kind: 'met',
    finding: 'dwell-at-once',
    figures: { hottest: { value: '161.3', unit: '°F' }, at: { value: '160', unit: '°F' } },
  });
});

test('only segments with both ends at the row count; the rest is shown as information', () => {
  const verdict = judge(curve('°F', [0, 135], [60, 145], [240, 145], [300, 135]));
  expect(verdict).toMatchObject({
    kind: 'missed',
    finding: 'dwell-too-short',
    figures: {
      held: { value: '180000', unit: 'ms' },
      at: { value: '145', unit: '°F' },
      needed: { value: '240000', unit: 'ms' },
      short: { value: '60000', unit: 'ms' },
      hottest: { value: '145', unit: '°F' },
      instant: { value: '158', unit: '°F' },
    },
  });
  expect(verdict.notes).toEqual([]);
  const bulging = judge(curve('°F', [0, 135], [60, 150], [180, 150], [240, 135]));
  expect(bulging.kind).toBe('met');
});

test('straight lines between the readings are shown where they would give more', () => {
  const verdict = judge(curve('°F', [0, 140], [60, 148.5], [120, 148.5], [180, 140]));
  expect(verdict.kind).toBe('missed');
  expect(verdict.notes).toEqual([
    { code: 'dwell-straight', figures: { at: { value: '148', unit: '°F' }, straight: { value: '60000', unit: 'ms' } } },
  ]);
});

test('two stretches do not add up', () => {
  expect(judge(curve('°F', [0, 145], [180, 145], [200, 120], [220, 145], [400, 145])).kind).toBe('missed');
});

test('a dip by one reading breaks the hold', () => {
  expect(judge(curve('°F', [0, 145], [120, 144.9], [240, 145])).kind).toBe('missed');
});

test('a gap longer than tolerated breaks the hold and leaves doubt', () => {
  const verdict = judge(curve('°F', [0, 145], [901, 145]));
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    finding: 'dwell-gap',
    figures: {
      held: { value: '0', unit: 'ms' },
      at: { value: '145', unit: '°F' },
      gap: { value: '901000', unit: 'ms' },
      tolerated: { value: '900000', unit: 'ms' },
      needed: { value: '240000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 145], [900, 145])).kind).toBe('met');
});

test('a gap breaks a running hold, which begins again', () => {
  const readings = curve('°F', [0, 145], [901, 145], [1021, 145]);
  expect(judge(readings, false)).toMatchObject({
    kind: 'undetermined',
    finding: 'dwell-holding',
    figures: {
      held: { value: '120000', unit: 'ms' },
      at: { value: '145', unit: '°F' },
      left: { value: '120000', unit: 'ms' },
      needed: { value: '240000', unit: 'ms' },
      instant: { value: '158', unit: '°F' },
    },
  });
});

test('a running hold says how much longer, and until when', () => {
  expect(judge(curve('°F', [0, 140], [60, 148.2], [120, 148.5]), false)).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'dwell-hold',
      figures: { at: { value: '148', unit: '°F' }, needed: { value: '107000', unit: 'ms' } },
      since: 60000,
      until: 167000,
    },
    finding: 'dwell-holding',
    figures: {
      held: { value: '60000', unit: 'ms' },
      at: { value: '148', unit: '°F' },
      left: { value: '47000', unit: 'ms' },
      needed: { value: '107000', unit: 'ms' },
      instant: { value: '158', unit: '°F' },
    },
  });
});

test('a cook still warming up is told the lowest temperature of the table', () => {
  expect(judge(curve('°C', [0, 20], [600, 48]), false)).toMatchObject({
    kind: 'undetermined',
    running: { code: 'dwell-come-up', figures: { at: { value: '54.4', unit: '°C' } } },
    finding: 'dwell-coming-up',
    figures: { hottest: { value: '48', unit: '°C' }, at: { value: '54.4', unit: '°C' } },
  });
});

test('a hold nobody has read for a while asks for a reading', () => {
  const readings = curve('°F', [0, 140], [60, 140]);
  expect(judge(readings, false, 60_000 + 901_000)).toMatchObject({
    finding: 'dwell-holding',
    figures: {
      held: { value: '60000', unit: 'ms' },
      at: { value: '140', unit: '°F' },
      left: { value: '660000', unit: 'ms' },
      needed: { value: '720000', unit: 'ms' },
      age: { value: '901000', unit: 'ms' },
    },
  });
  expect(judge(readings, false, 120_000)).toMatchObject({
    finding: 'dwell-holding',
    figures: {
      held: { value: '60000', unit: 'ms' },
      at: { value: '140', unit: '°F' },
      left: { value: '660000', unit: 'ms' },
      needed: { value: '720000', unit: 'ms' },
      instant: { value: '158', unit: '°F' },
    },
  });
});

test('a core that never reached the table says by how much', () => {
  expect(judge(curve('°F', [0, 129.9]))).toMatchObject({
    kind: 'missed',
    finding: 'dwell-too-cold',
    figures: { hottest: { value: '129.9', unit: '°F' }, at: { value: '130', unit: '°F' }, short: { value: '0.1', unit: '°F' } },
  });
});

test.each([
  ['no readings', []],
  ['only what cannot be', curve('°C', [0, 301], [60, -41])],
  ['no numbers', [{ at: 0, temperature: { hundredths: NaN, unit: '°F' as const } }]],
  ['no times', [{ at: NaN, temperature: degrees(160, '°F') }]],
])('%s is undetermined, ended or not', (_case, readings) => {
  expect(judge(readings, true)).toMatchObject({ kind: 'undetermined', finding: 'no-usable-reading' });
  expect(judge(readings, false).kind).toBe('undetermined');
});

test('what cannot be true is left out and named', () => {
  const verdict = judge(curve('°F', [0, 145], [120, 999], [240, 145]));
  expect(verdict.kind).toBe('met');
  expect(verdict.notes).toEqual([{ code: 'cannot-be', figures: { count: 1 } }]);
});

test('readings out of order are sorted and named', () => {
  const verdict = judge(curve('°F', [240, 145], [0, 145]));
  expect(verdict.kind).toBe('met');
  expect(verdict.notes).toEqual([{ code: 'sorted' }]);
});

test('of two values of one instant the colder counts', () => {
  const verdict = judge(curve('°F', [0, 145], [120, 145], [120, 144], [240, 145]));
  expect(verdict.kind).toBe('missed');
  expect(verdict.notes).toContainEqual({ code: 'disagreeing', figures: { count: 1 } });
  expect(judge(curve('°F', [0, 145], [120, 145], [120, 145], [240, 145])).notes).toEqual([]);
});

test('a table whose rows contradict each other, or an empty one, decides nothing', () => {
  const rows = [
    { at: { '°F': 14500, '°C': 6280 }, seconds: 240 },
    { at: { '°F': 15000, '°C': 6000 }, seconds: 0 },
  ];
  expect(judgeDwell(curve('°C', [0, 61]), { ...cookedMeat65Log, rows }, { ended: true }).kind).toBe('undetermined');
  expect(judgeDwell(curve('°C', [0, 80]), { ...cookedMeat65Log, rows: [] }, { ended: true }).kind).toBe('undetermined');
});

test('leaving out a reading of a rising or falling stretch never turns doubt into met', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 14_000, max: 15_900 })), {
        minLength: 3,
        maxLength: 12,
      }),
      fc.nat(),
      (steps, pick) => {
        let at = 0;
        const readings = steps.map(([gap, hundredths]) => ({
          at: (at += gap * 1000),
          temperature: { hundredths, unit: '°F' as const },
        }));
        const index = 1 + (pick % (readings.length - 2));
        const [before, own, after] = readings.slice(index - 1, index + 2).map(({ temperature }) => temperature.hundredths);
        fc.pre(isBetween(before ?? 0, own ?? 0, after ?? 0));
        if (judge(readings).kind !== 'met') expect(judge(readings.filter((_, i) => i !== index)).kind).not.toBe('met');
      },
    ),
  );
});

test('a longer gap never turns doubt into met', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 14_000, max: 15_700 }), { minLength: 2, maxLength: 8 }),
      fc.nat(),
      fc.integer({ min: 901, max: 9000 }),
      (values, pick, gap) => {
        const late = 1 + (pick % (values.length - 1));
        const make = (longer: number) =>
          values.map((hundredths, i) => ({
            at: i * 60_000 + (i >= late ? gap * 1000 + longer : 0),
            temperature: { hundredths, unit: '°F' as const },
          }));
        if (judge(make(0)).kind !== 'met') expect(judge(make(3_600_000)).kind).not.toBe('met');
      },
    ),
  );
});

function isBetween(before: number, own: number, after: number): boolean {
  return own >= Math.min(before, after) && own <= Math.max(before, after);
}
