import {
  coolingUncured,
  degrees,
  inDoubt,
  judgeCurve,
  judgeRange,
  coldHolding,
  withPutInLater,
  type CurveReading,
} from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { allWords } from '../all';
import type { Language } from '../languages';
import { teller } from './tell';

const { tell } = teller(
  { verdicts: allWords.verdicts.en, limits: allWords.limits.en },
  { language: 'en', timeZone: 'UTC', timeStyle: 'US' },
);
const inSpanish = teller(
  { verdicts: allWords.verdicts.es, limits: allWords.limits.es },
  { language: 'es', timeZone: 'UTC', timeStyle: 'US' },
).tell;

const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * 60_000, temperature: degrees(value, '°F') }));
const chill = (...points: [number, number][]) => judgeCurve(curve(...points), coolingUncured, { ended: true });

describe('a chill', () => {
  const both = chill([0, 130], [105, 80], [300, 60], [585, 40]);

  test('tells every stage that is missed, by the largest overrun, in the unit read', () => {
    expect(tell(both, coolingUncured)).toMatchObject({
      kind: 'missed',
      measured: '130 → 80 °F in 1 h 45 min, 80 → 40 °F in 8 h',
      limit: '130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h',
      margin: '3 h too long',
      because: '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed. 80 → 40 °F took 8 h; 5 h are allowed.',
      next: 'Hold the lot and follow the corrective action of the plan.',
      source: coolingUncured.source,
    });
  });

  test('is told in the language of the reader', () => {
    expect(inSpanish(both, coolingUncured)).toMatchObject({
      measured: '130 → 80 °F en 1 h 45 min, 80 → 40 °F en 8 h',
      margin: '3 h de más',
      because: '130 → 80 °F tardó 1 h 45 min; se permiten 1 h 30 min. 80 → 40 °F tardó 8 h; se permiten 5 h.',
    });
  });

  test('that runs says what is due, and how it can still be met', () => {
    const running = judgeCurve(curve([0, 130], [40, 105]), coolingUncured, { ended: false, now: 65 * 60_000 });
    expect(tell(running, coolingUncured)).toMatchObject({
      because: '80 °F has not been reached yet.',
      next: 'Chill on: reach 80 °F within the next 25 min.',
      running: { stage: '130 → 80 °F', bound: '80 °F', deadline: 90 * 60_000 },
      notes: ['130 → 80 °F can still be met: 80 °F within 25 min, 60 °F an hour on average.'],
    });
  });

  test('in doubt says what was measured all the same, and has nothing to spare', () => {
    const met = chill([0, 130], [60, 80], [200, 40]);
    const told = tell(withPutInLater(met, [300 * 60_000], 0), coolingUncured);
    expect(told).toMatchObject({ kind: 'undetermined', measured: '130 → 80 °F in 1 h, 80 → 40 °F in 2 h 20 min' });
    expect(told.because).toContain('meat went in after the last reading');
    expect(told.margin).toBeUndefined();
  });
});

test('a value is told with its limit, and a doubt about it with what was read all the same', () => {
  const cold = judgeRange(degrees(36, '°F'), coldHolding);
  expect(tell(cold, coldHolding)).toMatchObject({ measured: '36 °F', because: '36 °F is within the limit.' });
  expect(tell(inDoubt(cold, 'time-to-come'), coldHolding)).toMatchObject({
    measured: '36 °F',
    because: 'A reading is dated later than it was kept: it cannot have been read yet.',
  });
});

test('a miss that the formula adds to is told before it', () => {
  const missed = chill([0, 130], [105, 80], [300, 40]);
  const also = [{ finding: 'formula-not-allowed', figures: { asked: 'at least 100 ppm', there: '98 ppm', by: '2 ppm' } }];
  expect(tell({ ...missed, also, then: { code: 'judge-by-another-option' } }, coolingUncured)).toMatchObject({
    measured: '98 ppm for at least 100 ppm; 130 → 80 °F in 1 h 45 min, 80 → 40 °F in 3 h 15 min',
    because:
      '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed. ' +
      'This option may not be used: it asks for at least 100 ppm, and there is 98 ppm.',
    next: 'Hold the lot and follow the corrective action of the plan; judge it by an option for any product.',
  });
});

test.each<Language>(['en', 'es'])('one teller serves a voice: %s', (language) => {
  const voice = { language, timeZone: 'UTC', timeStyle: 'US' } as const;
  const words = { verdicts: allWords.verdicts[language], limits: allWords.limits[language] };
  expect(teller(words, voice)).toBe(teller({ ...words }, { ...voice }));
});
