import { describe, expect, test } from 'vitest';
import { atMostOneLogGrown } from '../limit-sets/fsis-processes';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { judgeCurve } from '../limits/judge-curve';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import { growthUnderCure } from './cured-growth';
import { estimateGrowth } from './estimate-growth';
import { growthFound } from './growth-found';
import { plainPart } from '../limits/plain-part.test-data';
import { fastestCelsius, growthRate } from './growth-rate';
import { growthSetsFor, uncuredBeef } from './growth-set';

const HOUR = 3_600_000;
const at = (hours: number, celsius: number, probe?: string): CurveReading => ({
  at: hours * HOUR,
  temperature: { hundredths: Math.round(celsius * 100), unit: '°C' },
  probe,
});
const chill = [at(0, 54.4), at(1.5, 26.7), at(6.5, 4.4)];
const noGaps = { longestGap: Infinity };

const highestOf = (...how: Parameters<typeof estimateGrowth>) => {
  const outcome = estimateGrowth(...how);
  if (outcome.kind !== 'estimate') throw new Error(outcome.because.code);
  return outcome.highest;
};

test('mixed or unknown meat is worked out with every set and the highest is shown', () => {
  const outcome = estimateGrowth(chill, 'mixed or unknown', noGaps);
  expect(outcome).toMatchObject({ kind: 'estimate', highest: { set: { species: 'beef' } } });
  expect(outcome.kind === 'estimate' && outcome.all.map(({ set }) => set.species)).toEqual(['beef', 'chicken', 'pork']);
  expect(highestOf(chill, 'pork', noGaps).set.species).toBe('pork');
  expect(growthSetsFor('mixed or unknown')).toHaveLength(3);
});

test('a figure is never without its words, its model, its set, their version and its claim', () => {
  expect(highestOf(chill, 'beef', noGaps)).toMatchObject({
    is: 'model estimate',
    model: 'C. perfringens: rate of Juneja et al. 2011, lag of Baranyi and Roberts 1994',
    set: { version: '1', source: { confirmed: false } },
    unseen: [],
    restsOn: { readings: 3, from: 0, to: 6.5 * HOUR },
    claim: 'growth-claim',
  });
  expect(plainPart(growthFound(highestOf(chill, 'beef', noGaps)))).toBe('grown grown-above-2-log growth-set-beef 1 unconfirmed');
});

test('confirmed figures are not called unconfirmed', () => {
  const growth = highestOf(chill, 'beef', noGaps);
  const set = { ...growth.set, source: { ...growth.set.source, confirmed: true } };
  expect(growthFound({ ...growth, set }).figures).toMatchObject({ standing: 'confirmed' });
});

test('across a gap the fastest rate between its ends is taken, the optimum included', () => {
  const { atMost, byStraightLines } = highestOf([at(0, 54.4), at(0.1, 54.3), at(2.1, 30)], 'beef');
  expect(atMost.noLag).toBeCloseTo(2 * growthRate(uncuredBeef, fastestCelsius(uncuredBeef)), 9);
  expect(byStraightLines.noLag).toBeLessThan(atMost.noLag);
  expect(highestOf([at(0, 54.4), at(2, 20), at(4, 15), at(9, 4)], 'pork').atMost.noLag).toBeGreaterThan(4);
  expect(plainPart(growthFound(highestOf(chill, 'pork')))).toMatch(/^grown grown-0\.5-to-1-log grown-above-2-log /);
});

test('growth still possible at the last reading makes it at least', () => {
  const open = highestOf(chill.slice(0, 2), 'beef', noGaps);
  expect(open.unseen).toEqual(['after the last reading']);
  expect(plainPart(growthFound(open))).toMatch(/^grown-at-least grown-1-to-2-log/);
  expect(highestOf([at(0, 60), at(1, 58)], 'beef').unseen).toEqual(['after the last reading']);
});

test('a first reading already in the range hides what came before, whatever was recorded', () => {
  const late = [at(0.75, 40.55), ...chill.slice(1)];
  expect(highestOf(late, 'beef', noGaps)).toMatchObject({ unseen: ['before the first reading'] });
  // No cooking ends at 40.55 °C: an end recorded right then was written down late.
  const recordedLate = highestOf(late, 'beef', { ...noGaps, cookingEnded: 0.75 * HOUR });
  expect(recordedLate.unseen).toEqual(['before the first reading']);
  const known = highestOf(late, 'beef', { ...noGaps, cookingEnded: 0 });
  const lead = 0.75 * growthRate(uncuredBeef, fastestCelsius(uncuredBeef));
  expect(known.unseen).toEqual(['before the first reading']);
  expect(known.atMost.noLag - known.byStraightLines.noLag).toBeCloseTo(lead, 9);
});

test('what was read before the end of cooking belongs to heating', () => {
  const cook = [at(-3, 20), at(-1, 45)];
  expect(highestOf([...cook, ...chill], 'beef', { ...noGaps, cookingEnded: 0 })).toEqual(
    highestOf(chill, 'beef', { ...noGaps, cookingEnded: 0 }),
  );
  expect(highestOf(chill, 'beef', { ...noGaps, cookingEnded: NaN })).toEqual(highestOf(chill, 'beef', noGaps));
});

test('of one instant with two values the worst between them is taken', () => {
  const twice = [at(0, 50), at(0.2, 46), at(0.2, 30), at(0.4, 28)];
  const { byStraightLines, atMost } = highestOf(twice, 'beef');
  expect(atMost.noLag).toBeGreaterThan(byStraightLines.noLag);
  expect(byStraightLines.noLag).toBe(highestOf([at(0, 50), at(0.2, 46), at(0.4, 28)], 'beef').byStraightLines.noLag);
});

test('with several probes the highest governs and is named', () => {
  const slow = [at(0, 54.4, 'B'), at(3, 26.7, 'B'), at(8, 4.4, 'B')];
  const both = estimateGrowth([...chill.map((reading) => ({ ...reading, probe: 'A' })), ...slow], 'pork', noGaps);
  expect(both).toMatchObject({ highest: { probe: 'B' } });
});

test('between two equal bounds the higher estimate is shown', () => {
  // Both probes are one gap whose bound is the optimum; by straight lines the one that falls less grows more.
  const [steep, flat] = [
    [at(0, 52, 'A'), at(2, 12, 'A')],
    [at(0, 52, 'B'), at(2, 40, 'B')],
  ];
  expect(highestOf([...steep, ...flat], 'beef').probe).toBe('B');
});

test.each([
  ['nothing', [], 'nothing-read-of-cooling'],
  ['an open circuit', [at(0, 999), at(1, NaN)], 'nothing-read-of-cooling'],
  ['one reading', [at(0, 54.4)], 'one-reading-of-cooling'],
  ['one instant only', [at(0, 54.4), at(0, 54.4)], 'one-reading-of-cooling'],
  ['one of probe B', [...chill, at(1, 30, 'B')], 'one-reading-of-cooling B'],
])('%s is undetermined', (_case, readings, because) => {
  const outcome = estimateGrowth(readings, 'beef');
  expect(outcome.kind === 'undetermined' && plainPart(outcome.because)).toBe(because);
});

test('what never cools keeps growing in the figure, and all the same reading is counted as it is', () => {
  expect(highestOf([at(0, 45), at(2, 45)], 'beef', noGaps).byStraightLines.noLag).toBeCloseTo(5.167966, 6);
});

test('for a cured product there are published cures and a worst case, and no figure of its own', () => {
  const growth = growthUnderCure(chill, 'pork', { startAt: 0 }, noGaps);
  expect(growth).toMatchObject({
    kind: 'no model',
    worstCase: { as: 'worst case, as if uncured', growth: { kind: 'estimate' } },
  });
  expect(growth).not.toHaveProperty('log10');
  const stayedDown = growth.published.filter(({ nitritePpm }) => nitritePpm >= 100);
  const grew = growth.published.filter(({ nitritePpm }) => nitritePpm < 100);
  expect(stayedDown.every(({ seen }) => /^seen-(below-one-log|no-growth)$/.test(seen.code))).toBe(true);
  expect(grew.map(({ seen }) => plainPart(seen))).toEqual(['seen-early 1.9 log10', 'seen-early 4.4 log10', 'seen-logs 3.59 log10']);
});

describe('a chill that is exactly option 1', () => {
  /** Straight from 130 °F to 80 °F in 90 min and on to 40 °F in 5 h more (FSIS Appendix B 1999, option 1). */
  const optionOne = Array.from({ length: 79 }, (_, i): CurveReading => {
    const minutes = i * 5;
    const fahrenheit = minutes <= 90 ? 130 - (50 * minutes) / 90 : 80 - (40 * (minutes - 90)) / 300;
    return { at: minutes * 60_000, temperature: degrees(Math.round(fahrenheit * 100) / 100, '°F') };
  });

  test.each([
    ['mixed or unknown', '2.1'],
    ['beef', '2.1'],
    ['chicken', '0.99'],
    ['pork', '0.97'],
  ] as const)('is predicted, of %s, %s log: the message growth-at-option-1 tells these figures', (species, log10) => {
    const { withLag } = highestOf(optionOne, species, noGaps).byStraightLines;
    expect(withLag.toFixed(log10.length - 2)).toBe(log10);
  });

  test('is held by the limit as it is offered, though option 1 lets it pass', () => {
    const context = { ended: true };
    expect(judgeCurve(optionOne, coolingUncured, context).kind).toBe('met');
    expect(judgeCurve(optionOne, atMostOneLogGrown, context).kind).toBe('missed');
  });
});
