import { describe, expect, test } from 'vitest';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { coolingFromCooking } from '../../limit-sets/fsis-stabilization';
import { chillingAt } from './chilling-at.test-data';
import { MINUTE, hours, curve, judge } from './judge-chill.test-data';

describe('of several stages that are missed', () => {
  test('the largest overrun is stated, and every one of them', () => {
    const both = curve('°F', [0, 130], [105, 80], [300, 60], [585, 40]);
    expect(judge(both)).toMatchObject({
      kind: 'missed',
      finding: 'cooling-too-late',
      figures: { over: hours(3) },
      parts: [
        { kind: 'missed', finding: 'cooling-too-late', measure: 'stage-took', figures: { took: hours(1.75), allowed: hours(1.5) } },
        { kind: 'missed', finding: 'cooling-too-late', measure: 'stage-took', figures: { took: hours(8), allowed: hours(5) } },
      ],
    });
    expect(judge(curve('°F', [0, 130], [390, 80], [600, 60], [750, 40]))).toMatchObject({ figures: { over: hours(5) } });
  });

  test('it grows with the readings of the one that goes on', () => {
    const overruns = [105, 200, 270].map((minute) => judge(curve('°F', [0, 130], [minute, 85]), { ended: false }).figures);
    const minutesOver = (minutes: number) => ({ over: { value: String(minutes * 60_000), unit: 'ms' } });
    expect(overruns).toMatchObject([15, 110, 180].map(minutesOver));
    expect(judge(curve('°F', [0, 130], [105, 80], [465, 42]), { ended: false })).toMatchObject({
      finding: 'cooling-still-above',
      figures: {
        stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
        to: { value: '40', unit: '°F' },
        allowed: { value: '18000000', unit: 'ms' },
        reading: { value: '42', unit: '°F' },
        from: { value: '80', unit: '°F' },
        took: { value: '21600000', unit: 'ms' },
        over: { value: '3600000', unit: 'ms' },
      },
    });
  });

  test('while it goes on it is said to be cooling still, and no longer once it is over or ended', () => {
    const going = curve('°F', [0, 130], [105, 80], [200, 60]);
    expect(judge(going, { ended: false }).still).toBe('cooling');
    expect(judge(curve('°F', [0, 130], [105, 85]), { ended: false }).still).toBe('cooling');
    expect(judge(going).still).toBeUndefined();
    expect(judge(curve('°F', [0, 130], [105, 80], [300, 40]), { ended: false }).still).toBeUndefined();
    expect(judge(curve('°F', [0, 130], [60, 85]), { ended: false }).still).toBeUndefined();
  });

  test('one that never began says so beside the one that is over', () => {
    expect(judge(curve('°F', [0, 130], [105, 85]))).toMatchObject({
      figures: { over: hours(0.25) },
      parts: [{ kind: 'missed' }, { kind: 'missed', finding: 'cooling-ended-above', figures: { to: { value: '40', unit: '°F' } } }],
    });
  });

  test('a late start of chilling is one of them', () => {
    const late = judge(
      curve('°F', [10, 150], [200, 119], [400, 80], [600, 55]),
      { startAt: 0, chillingBegan: chillingAt(190 * MINUTE) },
      coolingFromCooking,
    );
    expect(late).toMatchObject({
      kind: 'missed',
      finding: 'cooling-too-late',
      figures: {
        stage: { from: { value: '120', unit: '°F' }, to: { value: '55', unit: '°F' } },
        to: { value: '55', unit: '°F' },
        allowed: { value: '21600000', unit: 'ms' },
        from: { value: '120', unit: '°F' },
        took: { value: '35400000', unit: 'ms' },
        over: { value: '13800000', unit: 'ms' },
      },
    });
    expect(late.parts?.[0]).toMatchObject({ kind: 'missed', finding: 'chill-start-too-late', figures: { over: hours(5 / 3) } });
  });
});

test('a stage in all runs from where the first begins, and is missed before its own figure is reached', () => {
  const standing = (...minutes: number[]) =>
    judge(curve('°F', [0, 135], ...minutes.map((minute): [number, number] => [minute, 100])), { ended: false }, coolingFoodCode);
  expect(standing(60)).toMatchObject({
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '70', unit: '°F' } },
      to: { value: '70', unit: '°F' },
      allowed: { value: '7200000', unit: 'ms' },
      reading: { value: '100', unit: '°F' },
      from: { value: '135', unit: '°F' },
      took: { value: '3600000', unit: 'ms' },
      leftThen: { value: '3600000', unit: 'ms' },
      toGo: { value: '3600000', unit: 'ms' },
    },
  });
  expect(standing(60, 240, 420)).toMatchObject({
    finding: 'cooling-still-above',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '70', unit: '°F' } },
      to: { value: '70', unit: '°F' },
      allowed: { value: '7200000', unit: 'ms' },
      reading: { value: '100', unit: '°F' },
      from: { value: '135', unit: '°F' },
      took: { value: '25200000', unit: 'ms' },
      over: { value: '18000000', unit: 'ms' },
    },
  });
});

test('a stage in all is named by where its clock starts', () => {
  expect(judge(curve('°F', [0, 135], [90, 70], [361, 41]), {}, coolingFoodCode)).toMatchObject({
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '41', unit: '°F' } },
      to: { value: '41', unit: '°F' },
      allowed: { value: '21600000', unit: 'ms' },
      from: { value: '135', unit: '°F' },
      took: { value: '21660000', unit: 'ms' },
      over: { value: '60000', unit: 'ms' },
    },
  });
});
