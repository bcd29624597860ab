import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysToLoss, fitDrying, forecastDrying, judgeWeightLoss, massOf, type Weighing } from '@larderbook/haccp';

const DAY = 86_400_000;
const dry = (days: number, kilograms: number): Weighing => ({
  at: Math.round(days * DAY),
  mass: massOf({ value: Number(kilograms.toFixed(3)), unit: 'kg' }),
});
const source = { citation: 'an invented plan', edition: '', confirmed: true };

/** Arithmetic: 6.700 of 10.000 kg is exactly 33 % lost. */
describe('weight loss', () => {
  test.each([
    ['on the figure', 6.7, 'met'],
    ['a gram short', 6.701, 'missed'],
    ['a gram over', 6.699, 'met'],
  ])('33 %% of 10 kg, %s', (_case, kilograms, kind) => {
    expect(judgeWeightLoss([dry(0, 10), dry(30, kilograms)], { percent: 33, source }, true).kind).toBe(kind);
  });

  test('exact where floating point is not: 0.1 % of 3.003 kg', () => {
    const grams = (value: number): Weighing => ({ at: DAY, mass: massOf({ value, unit: 'g' }) });
    const weighings = (now: number): Weighing[] => [dry(0, 3.003), grams(now)];
    expect(judgeWeightLoss(weighings(2999.997), { percent: 0.1, source }, true).kind).toBe('met');
    expect(judgeWeightLoss(weighings(2999.998), { percent: 0.1, source }, true).kind).toBe('missed');
  });
});

/** lost = final (1 − e^(−t/τ)): Lewis 1921, Ind Eng Chem 13:427, from memory. */
describe('the drying law finds its own constants', () => {
  const law = (final: number, tau: number) => (days: number) => ({ days, lost: -final * Math.expm1(-days / tau) });

  test.each([
    [0.4, 12],
    [0.55, 30],
    [0.35, 5],
  ])('final loss %s, time constant %s days', (final, tauDays) => {
    const fitted = fitDrying([2, 5, 9, 14].map(law(final, tauDays)));
    expect(fitted).toEqual({ final: expect.closeTo(final, 5), tauDays: expect.closeTo(tauDays, 3) });
    expect(daysToLoss(fitted, 0.33)).toBeCloseTo(-tauDays * Math.log(1 - 0.33 / final), 3);
    expect(daysToLoss(fitted, final + 0.01)).toBe(Infinity);
  });

  test('a straight line is its limit', () => {
    expect(daysToLoss(fitDrying([2, 5, 9].map((days) => ({ days, lost: days / 100 }))), 0.33)).toBeCloseTo(33, 0);
  });
});

test('a lot that follows the law, the root of time or a straight line loses its weight within the range', () => {
  const ways = {
    law: (share: number) => -Math.expm1(-share),
    root: (share: number) => Math.sqrt(share),
    line: (share: number) => share,
  };
  const anyWay = fc.constantFrom<keyof typeof ways>('law', 'root', 'line');
  fc.assert(
    fc.property(anyWay, fc.integer({ min: 10, max: 60 }), (name, days) => {
      const way = ways[name];
      const whole = name === 'law' ? 2 : 1;
      const kilograms = (share: number) => 1000 - (330 * way(share * whole)) / way(whole);
      const weighings = [0, 0.2, 0.4, 0.6, 0.75, 0.9].map((share) => dry(share * days, kilograms(share)));
      const said = forecastDrying(weighings, 33);
      if (!('arrival' in said)) return;
      expect(said.arrival.earliest).toBeLessThanOrEqual((days + 0.05) * DAY);
      expect(said.arrival.latest ?? Infinity).toBeGreaterThanOrEqual((days - 0.05) * DAY);
    }),
  );
});

test('whatever comes in, there is an answer and nothing is thrown', () => {
  const number = (max: number) => fc.oneof(fc.double(), fc.integer({ min: 1, max }));
  const weighing = fc.record({ at: number(1e10), mass: fc.bigInt({ min: -10n, max: 10n ** 19n }) });
  fc.assert(
    fc.property(fc.array(weighing, { maxLength: 8 }), number(60), (weighings, percent) => {
      const said = forecastDrying(weighings, percent);
      expect(said).toMatchObject({ use: 'advice, never acceptance', because: { code: expect.any(String) } });
      expect(JSON.stringify(said)).not.toMatch(/NaN|null/);
      expect(['met', 'missed', 'undetermined']).toContain(judgeWeightLoss(weighings, { percent, source }, true).kind);
    }),
  );
});
