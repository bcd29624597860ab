import { expect, test } from 'vitest';
import { coolingUncured } from '../../limit-sets/fsis-stabilization';
import { MINUTE, curve, judge } from './judge-chill.test-data';

test('while a stage runs it says what to reach and by when', () => {
  const readings = curve('°F', [0, 130], [40, 105]);
  expect(judge(readings, { ended: false, now: 65 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, to: { value: '80', unit: '°F' } },
      deadline: 5400000,
      since: 0,
    },
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '105', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '2400000', unit: 'ms' },
      left: { value: '1500000', unit: 'ms' },
      toGo: { value: '3000000', unit: 'ms' },
    },
  });
  expect(judge(readings, { ended: false })).toMatchObject({
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '105', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '2400000', unit: 'ms' },
      leftThen: { value: '3000000', unit: 'ms' },
      toGo: { value: '3000000', unit: 'ms' },
    },
  });
});

test('the clock alone only warns; a reading after the deadline decides', () => {
  const readings = curve('°F', [0, 130], [80, 85]);
  expect(judge(readings, { ended: false, now: 91 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-overdue',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '85', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '4800000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 81]), { ended: false })).toMatchObject({
    kind: 'missed',
    finding: 'cooling-still-above',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '81', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '5520000', unit: 'ms' },
      over: { value: '120000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 79]), { ended: false }).kind).toBe('undetermined');
});

test('the second stage runs after the first was met', () => {
  const verdict = judge(curve('°F', [0, 130], [80, 80], [200, 55]), { ended: false, now: 320 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } }, to: { value: '40', unit: '°F' } },
      deadline: 22800000,
      since: 4800000,
    },
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      reading: { value: '55', unit: '°F' },
      from: { value: '80', unit: '°F' },
      took: { value: '7200000', unit: 'ms' },
      left: { value: '3600000', unit: 'ms' },
      toGo: { value: '10800000', unit: 'ms' },
    },
  });
});

test('a missed first stage stays missed while the second still runs', () => {
  const verdict = judge(curve('°F', [0, 130], [100, 80], [200, 55]), { ended: false, now: 300 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'missed',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } }, to: { value: '40', unit: '°F' } },
      deadline: 24000000,
      since: 6000000,
    },
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '6000000', unit: 'ms' },
      over: { value: '600000', unit: 'ms' },
    },
  });
});

test('a hot product has not begun to chill', () => {
  expect(judge(curve('°F', [0, 155]), { ended: false })).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-not-begun',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      from: { value: '130', unit: '°F' },
    },
  });
});

test('a chill ended above its bound is missed', () => {
  expect(judge(curve('°F', [0, 130], [80, 80], [200, 45]))).toMatchObject({
    kind: 'missed',
    finding: 'cooling-ended-above',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      reading: { value: '45', unit: '°F' },
      from: { value: '80', unit: '°F' },
      took: { value: '7200000', unit: 'ms' },
    },
  });
});

test('a gap longer than tolerated leaves doubt, unless the time is surely over', () => {
  const strict = { ...coolingUncured, longestGapSeconds: 3600 };
  expect(judge(curve('°F', [0, 130], [61, 80], [120, 60], [180, 40]), {}, strict)).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-gap',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '3660000', unit: 'ms' },
      gap: { value: '3660000', unit: 'ms' },
      tolerated: { value: '3600000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [60, 80], [120, 60], [180, 40]), {}, strict).kind).toBe('met');
  expect(judge(curve('°F', [0, 131], [70, 129], [165, 81], [170, 80], [220, 40]), {}, strict).kind).toBe('missed');
});
