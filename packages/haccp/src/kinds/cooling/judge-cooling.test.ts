import { expect, test } from 'vitest';
import { MINUTE, hours, curve, judge } from './judge-chill.test-data';

test.each([
  ['on every bound at its last minute', curve('°F', [0, 130], [90, 80], [390, 40]), 'met', { spare: hours(0) }],
  ['a minute late for 80 °F', curve('°F', [0, 130], [91, 80], [390, 40]), 'missed', { over: hours(1 / 60) }],
  ['a minute late for 40 °F', curve('°F', [0, 130], [90, 80], [391, 40]), 'missed', { over: hours(1 / 60) }],
  ['on every printed bound in °C', curve('°C', [0, 54.4], [90, 26.7], [390, 4.4]), 'met', { spare: hours(0) }],
  ['a minute late in °C', curve('°C', [0, 54.4], [91, 26.7], [390, 4.4]), 'missed', { over: hours(1 / 60) }],
])('a chill %s', (_case, readings, kind, figures) => {
  const finding = kind === 'met' ? 'cooling-in-time' : 'cooling-too-late';
  expect(judge(readings)).toMatchObject({ kind, finding, figures });
});

test('readings around the bounds are charged whole: not shown is not met', () => {
  const verdict = judge(curve('°F', [0, 141], [80, 82], [95, 79], [380, 39]));
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-not-shown',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5700000', unit: 'ms' },
    },
  });
  expect(verdict.notes).toEqual([
    {
      code: 'cooling-straight',
      figures: {
        stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
        straight: { value: '4500000', unit: 'ms' },
      },
    },
    {
      code: 'cooling-straight',
      figures: {
        stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
        straight: { value: '16980000', unit: 'ms' },
      },
    },
  ]);
});

test('too long by straight lines is missed', () => {
  expect(judge(curve('°F', [0, 131], [60, 100], [110, 79], [300, 39]))).toMatchObject({
    kind: 'missed',
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '6600000', unit: 'ms' },
      over: { value: '1200000', unit: 'ms' },
    },
  });
});

test('a met chill names the tightest stage', () => {
  const verdict = judge(curve('°F', [0, 130], [70, 80], [360, 40]));
  expect(verdict).toMatchObject({
    kind: 'met',
    notes: [],
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      from: { value: '80', unit: '°F' },
      took: { value: '17400000', unit: 'ms' },
      spare: { value: '600000', unit: 'ms' },
    },
  });
});

test('a bounce above the bound counts to the later crossing', () => {
  expect(judge(curve('°F', [0, 130], [60, 80], [75, 84], [100, 78], [300, 40])).kind).toBe('missed');
  expect(judge(curve('°F', [0, 130], [60, 80], [75, 84], [90, 80], [300, 40])).kind).toBe('met');
});

test('a core that rises above 130 °F again still counts from its first fall', () => {
  expect(judge(curve('°F', [0, 140], [60, 90], [100, 141], [120, 79], [300, 40])).kind).toBe('missed');
});

test('heating before the chill is not part of it', () => {
  const readings = curve('°F', [-200, 38], [-60, 128], [-30, 150], [0, 131], [10, 129], [80, 80], [300, 40]);
  expect(judge(readings)).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '4800000', unit: 'ms' },
      spare: { value: '600000', unit: 'ms' },
    },
  });
});

test('a first reading already below the bound leaves the start unknown', () => {
  const readings = curve('°F', [0, 120], [60, 80], [300, 40]);
  expect(judge(readings)).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-start-unknown',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '3600000', unit: 'ms' },
    },
  });
  expect(judge(readings, { startAt: -30 * MINUTE })).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5400000', unit: 'ms' },
      spare: { value: '0', unit: 'ms' },
    },
  });
  expect(judge(readings, { startAt: -31 * MINUTE }).kind).toBe('missed');
  expect(judge(curve('°F', [0, 120], [91, 80], [300, 40])).kind).toBe('missed');
});

test('readings of the cook do not move the start before the recorded end of cooking, while the core still warmed', () => {
  const chill: [number, number][] = [
    [10, 125],
    [85, 80],
    [300, 40],
  ];
  const cooled = curve('°F', [-20, 150], ...chill);
  expect(judge(cooled).kind).toBe('undetermined');
  expect(judge(cooled, { startAt: 0 }).kind).toBe('undetermined');
  const warmed = curve('°F', [-60, 38], [-20, 120], ...chill);
  expect(judge(warmed, { startAt: 0 })).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5100000', unit: 'ms' },
      spare: { value: '300000', unit: 'ms' },
    },
  });
});

test('a reading below the bound before the recorded end of cooking is believed over the record', () => {
  const readings = curve('°F', [0, 130], [1, 120], [91, 80], [300, 40]);
  expect(judge(readings, { startAt: 2 * MINUTE }).kind).toBe('missed');
});
