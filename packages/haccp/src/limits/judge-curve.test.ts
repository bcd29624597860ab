import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { cookedPoultry7Log } from '../limit-sets/fsis-poultry';
import { coolingFromCooking, coolingUncured } from '../limit-sets/fsis-stabilization';
import { degrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { chillingAt } from '../kinds/cooling/chilling-at.test-data';
import { judgeCurve } from './judge-curve';
import { worstVerdict } from './worst-verdict';

const reading = (probe: string | undefined, minutes: number, fahrenheit: number) => ({
  at: minutes * 60_000,
  temperature: degrees(fahrenheit, '°F'),
  probe,
});

test('one probe gives its own verdict', () => {
  const verdict = judgeCurve([reading('A', 0, 160)], cookedMeat65Log, { ended: true });
  expect(verdict).toMatchObject({
    kind: 'met',
    probe: 'A',
    notes: [],
    finding: 'dwell-at-once',
    figures: { hottest: { value: '160', unit: '°F' }, at: { value: '160', unit: '°F' } },
  });
});

test('the worst of several probes governs and is named', () => {
  const readings = [reading('A', 0, 160), reading('B', 0, 140), reading('C', 0, 139)];
  const verdict = judgeCurve(readings, cookedMeat65Log, { ended: true });
  expect(verdict).toMatchObject({ kind: 'missed', probe: 'C' });
  expect(verdict.notes[0]).toEqual({ code: 'probe-governs', figures: { probe: 'C', count: 3 } });
});

test('missed beats undetermined and undetermined beats met', () => {
  const met = [reading('A', 0, 130), reading('A', 80, 80), reading('A', 300, 40)];
  const unknown = [reading('B', 0, 120), reading('B', 80, 80), reading('B', 300, 40)];
  const missed = [reading('C', 0, 130), reading('C', 99, 80), reading('C', 300, 40)];
  const judge = (...readings: ReturnType<typeof reading>[]) => judgeCurve(readings, coolingUncured, { ended: true });
  expect(judge(...met, ...unknown)).toMatchObject({ kind: 'undetermined', probe: 'B' });
  expect(judge(...met, ...unknown, ...missed)).toMatchObject({ kind: 'missed', probe: 'C' });
  expect(judge(...met)).toMatchObject({ kind: 'met' });
});

test('readings of a probe without a name form their own curve', () => {
  const verdict = judgeCurve([reading('A', 0, 160), reading(undefined, 1, 120)], cookedMeat65Log, { ended: true });
  expect(verdict.kind).toBe('missed');
  expect(verdict.notes[0]).toEqual({ code: 'unnamed-governs', figures: { count: 2 } });
});

test('no readings at all are undetermined', () => {
  expect(judgeCurve([], cookedMeat65Log, { ended: true }).kind).toBe('undetermined');
});

test('a day at a reading a second that jitters across the rows is judged whole', () => {
  const readings = Array.from({ length: 86_400 }, (_, second) => ({
    at: second * 1000,
    temperature: { hundredths: 13_000 + ((second * 37) % 2500), unit: '°F' as const },
  }));
  expect(judgeCurve(readings, cookedPoultry7Log, { ended: true }).kind).toBe('missed');
  expect(judgeCurve(readings, coolingUncured, { ended: true }).kind).toBe('missed');
});

test('no readings, however broken, make a judge throw, and every verdict explains itself', () => {
  const instant = fc.oneof(fc.integer({ min: -1e6, max: 1e8 }), fc.constantFrom(NaN, Infinity, 0, 0.5));
  const hundredths = fc.oneof(fc.integer({ min: -5000, max: 40_000 }), fc.constantFrom(NaN, Infinity, 0.5, 1e300));
  const broken = fc.record<CurveReading>({
    at: instant,
    temperature: fc.record({ hundredths, unit: fc.constantFrom<TemperatureUnit>('°C', '°F') }),
    probe: fc.constantFrom(undefined, 'A', 'B'),
  });
  const context = fc.record({
    ended: fc.boolean(),
    now: fc.option(instant, { nil: undefined }),
    startAt: fc.option(instant, { nil: undefined }),
    chillingBegan: fc.option(
      instant.map((at) => chillingAt(at)),
      { nil: undefined },
    ),
  });
  const limit = fc.constantFrom(cookedMeat65Log, coolingUncured, coolingFromCooking, comeUpWithinSixHours);
  fc.assert(
    fc.property(fc.array(broken, { maxLength: 12 }), limit, context, (readings, judged, known) => {
      const verdict = judgeCurve(readings, judged, known);
      expect(['met', 'missed', 'undetermined']).toContain(verdict.kind);
      expect(JSON.stringify(verdict)).not.toMatch(/NaN|undefined|Infinity|unknown time/);
      expect(verdict.finding).toMatch(/./);
    }),
    { numRuns: 1000 },
  );
});

test('a reading sent twice does not disagree with itself', () => {
  const verdict = judgeCurve([reading('A', 0, 160), reading('A', 0, 160)], cookedMeat65Log, { ended: true });
  expect(verdict).toMatchObject({
    kind: 'met',
    notes: [],
    finding: 'dwell-at-once',
    figures: { hottest: { value: '160', unit: '°F' }, at: { value: '160', unit: '°F' } },
  });
});

test('of no verdicts none is the worst', () => {
  expect(() => worstVerdict([])).toThrow('There is no verdict to choose from');
});
