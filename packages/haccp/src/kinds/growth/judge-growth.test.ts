import { describe, expect, test } from 'vitest';
import { estimateGrowth } from '../../growth/estimate-growth';
import { addToGrowthLimit, beginGrowthLimit } from './growth-so-far';
import { atMostOneLogGrown } from '../../limit-sets/fsis-processes';
import { degrees } from '../../quantity/degrees';
import type { CurveReading } from '../../thermal/curve';
import { instantWith } from '../../thermal/instant';
import { judgeCurve } from '../../limits/judge-curve';
import { judgeGrowthSoFar } from './judge-growth';
import type { GrowthLimit } from './growth-limit';

const MINUTE = 60_000;
const beef = { ...atMostOneLogGrown, species: 'beef' as const };
const at = (minutes: number, celsius: number): CurveReading => ({
  at: minutes * MINUTE,
  temperature: degrees(Math.round(celsius * 100) / 100, '°C'),
});
/** By Newton's law from 60 °C in air of 0 °C. */
const cooling = (hours: number, halfLife: number, every = 5) =>
  Array.from({ length: Math.ceil((hours * 60) / every) + 1 }, (_, i) => at(i * every, 60 * 0.5 ** ((i * every) / 60 / halfLife)));
const judge = (readings: CurveReading[], context = {}, limit: GrowthLimit = beef) =>
  judgeCurve(readings, limit, { ended: true, ...context });

describe('predicted growth while cooling', () => {
  test('quick cooling stays below half a log, and says that it clears nothing', () => {
    expect(judge(cooling(8, 0.6))).toMatchObject({
      kind: 'met',
      ...{ finding: 'growth-within', measure: 'growth', notes: [{ code: 'growth-screening' }, { code: 'growth-claim' }] },
      figures: {
        grown: {
          code: 'grown',
          figures: { estimate: { code: 'grown-below-0.5-log' }, set: { code: 'growth-set-beef' }, version: '1', standing: 'unconfirmed' },
        },
      },
    });
  });

  test('slow cooling is missed, and agrees with the estimate for the same readings', () => {
    const readings = cooling(40, 8);
    const growth = estimateGrowth(readings, 'beef');
    expect(judge(readings).kind).toBe('missed');
    expect(growth.kind === 'estimate' && growth.highest.byStraightLines.withLag).toBeGreaterThan(1);
  });

  test('mixed meat is missed where straight lines of any set pass the bound', () => {
    // Just above where chicken lets spores grow, and below where beef does.
    const held = [at(0, 53.5), at(10, 10.1), at(2000 * 60, 10.1), at(2000 * 60 + 10, 3)];
    const by = (species: GrowthLimit['species']) =>
      judge(held, {}, { ...atMostOneLogGrown, species, log10: 2, longestGapSeconds: 2000 * 3600 });
    expect(by('chicken').kind).toBe('missed');
    expect(by('beef').kind).toBe('undetermined');
    expect(by('mixed or unknown')).toMatchObject({ kind: 'missed', figures: { set: { code: 'growth-set-chicken' } } });
  });

  test('mixed meat is judged by the set with the most growth', () => {
    const readings = cooling(20, 1);
    const by = (species: 'beef' | 'chicken' | 'pork' | 'mixed or unknown') =>
      judge(readings, {}, { ...atMostOneLogGrown, species }).spare ?? NaN;
    expect(by('mixed or unknown')).toBe(Math.min(by('beef'), by('chicken'), by('pork')));
  });

  test('mixed meat held for days at 15 °C is judged as chicken, which grows more there', () => {
    const held = Array.from({ length: 300 }, (_, hour) => at((hour + 1) * 60, 15));
    const by = (species: 'beef' | 'chicken' | 'mixed or unknown') => judge([at(0, 60), ...held], {}, { ...atMostOneLogGrown, species });
    expect(by('mixed or unknown')).toMatchObject({
      figures: { grown: { figures: { set: { code: 'growth-set-chicken' } } } },
    });
    expect(by('chicken').spare ?? NaN).toBeLessThan(by('beef').spare ?? NaN);
  });

  test('what was not seen is doubt: a late first reading, a gap, an end where spores grow', () => {
    expect(judge(cooling(8, 0.6).slice(6))).toMatchObject({ finding: 'growth-start-unseen' });
    const gap = cooling(8, 0.6).filter(({ at: when }) => when < 20 * MINUTE || when > 80 * MINUTE);
    expect(judge(gap)).toMatchObject({ kind: 'undetermined', finding: 'growth-gap', figures: { gap: { unit: 'ms' } } });
    expect(judge(cooling(1, 0.6))).toMatchObject({ finding: 'growth-ended-warm', figures: { coldest: { unit: '°C' } } });
    expect(judge([at(0, 60)])).toMatchObject({ finding: 'growth-one-reading' });
  });

  test('while it cools it goes on', () => {
    expect(judge(cooling(1, 0.6), { ended: false })).toMatchObject({
      kind: 'undetermined',
      figures: { grown: { code: 'grown-at-least' } },
      running: { code: 'growth', figures: { bound: { value: '1', unit: 'log10' } } },
    });
  });

  test('heating before the end of cooking is not counted', () => {
    const heated = [at(-60, 20), at(-30, 40), ...cooling(8, 0.6)];
    expect(judge(heated, { startAt: 0 }).kind).toBe('met');
    expect(judge([at(-60, 20), at(-30, 40)], { startAt: 0 })).toMatchObject({ finding: 'growth-one-reading' });
  });

  test('few readings leave room for more growth than straight lines', () => {
    const sparse = cooling(24, 1.1, 30);
    const verdict = judge(sparse);
    expect(verdict).toMatchObject({ kind: 'undetermined', finding: 'growth-not-sure' });
    expect(verdict).toMatchObject({ figures: { grown: { figures: { most: { code: 'grown-above-2-log' } } } } });
  });

  test('a limit of no growth at all is no limit', () => {
    expect(judge(cooling(8, 0.6), {}, { ...beef, log10: 0 })).toMatchObject({
      finding: 'limit-unusable',
      figures: { fault: { code: 'growth-bound-unusable' } },
    });
  });
});

test('figures that are confirmed are said without a doubt of them', () => {
  const growth = beginGrowthLimit(beef, 0, 0);
  for (const reading of cooling(8, 0.6)) addToGrowthLimit(growth, instantWith(reading));
  const confirmed = growth.sums.map((sum) => ({
    ...sum,
    set: { ...sum.set, source: { ...sum.set.source, confirmed: true } },
  }));
  const { figures } = judgeGrowthSoFar({ ...growth, sums: confirmed }, [], { ended: true });
  expect(figures).toMatchObject({ grown: { figures: { standing: 'confirmed' } } });
});
