import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addToCourse, beginCourse, forecast, forecastOf, type CurveReading, type ForecastTask } from '@larderbook/haccp';

const unit = fc.constantFrom('°C' as const, '°F' as const);
const number = fc.oneof(fc.double(), fc.integer({ min: -5000, max: 40_000 }));
const anyReading: fc.Arbitrary<CurveReading> = fc.record(
  {
    at: fc.oneof(fc.double(), fc.integer({ min: 0, max: 50_000_000 })),
    temperature: fc.record({ hundredths: number, unit }),
    probe: fc.constantFrom('A', 'B'),
  },
  { requiredKeys: ['at', 'temperature'] },
);
const anyTask: fc.Arbitrary<ForecastTask> = fc.record({
  way: fc.constantFrom('cooling' as const, 'heating' as const),
  target: fc.record({ '°F': number, '°C': number }, { requiredKeys: [] }),
  medium: fc.record({
    temperature: fc.record({ hundredths: number, unit }),
    is: fc.constantFrom('measured' as const, 'set point' as const),
  }),
});
const states = ['undetermined', 'too early to tell', 'reached', 'on course', 'at risk', 'will miss', 'expected'];

test('whatever comes in, there is one of the states, as advice, and nothing is thrown', () => {
  fc.assert(
    fc.property(fc.array(anyReading, { maxLength: 12 }), anyTask, fc.option(fc.double()), (readings, task, by) => {
      const said = forecast(readings, task, by ?? undefined);
      expect(states).toContain(said.state);
      expect(said).toMatchObject({ use: 'advice, never acceptance', because: [expect.anything()] });
      expect(JSON.stringify(said)).not.toMatch(/NaN|null/);
    }),
    { numRuns: 500 },
  );
});

const cooling = fc.record({
  start: fc.integer({ min: 5500, max: 9000 }),
  medium: fc.integer({ min: -300, max: 900 }),
  tau: fc.double({ min: 0.5, max: 6, noNaN: true }),
  step: fc.integer({ min: 60_000, max: 900_000 }),
  taken: fc.integer({ min: 3, max: 60 }),
});
const readingsOf = ({ start, medium, tau, step, taken }: typeof cooling extends fc.Arbitrary<infer T> ? T : never) =>
  Array.from({ length: taken }, (_, i): CurveReading => {
    const celsius = medium + (start - medium) * Math.exp((-i * step) / 3_600_000 / tau);
    return { at: i * step, temperature: { hundredths: Math.round(celsius), unit: '°C' } };
  });
const taskOf = (medium: number): ForecastTask => ({
  way: 'cooling',
  target: { '°C': 2670 },
  medium: { temperature: { hundredths: medium, unit: '°C' }, is: 'measured' },
});

test('one reading at a time gives what all at once give, and the range is in order and after the last reading', () => {
  fc.assert(
    fc.property(cooling, (fall) => {
      const readings = readingsOf(fall);
      const course = beginCourse(taskOf(fall.medium));
      for (const reading of readings) addToCourse(course, reading);
      const said = forecastOf(course);
      expect(said).toEqual(forecast(readings, taskOf(fall.medium)));
      if (!('arrival' in said)) return;
      const { best = Infinity, earliest = Infinity, latest = Infinity } = said.arrival;
      const last = readings[readings.length - 1]?.at ?? NaN;
      expect([last <= earliest, earliest <= best, best <= latest]).toEqual([true, true, true]);
    }),
  );
});

test('a core that follows the law arrives within the range', () => {
  fc.assert(
    fc.property(cooling, (fall) => {
      const said = forecast(readingsOf(fall), taskOf(fall.medium));
      if (!('arrival' in said)) return;
      const truth = fall.tau * Math.log((fall.start - fall.medium) / (2670 - fall.medium)) * 3_600_000;
      expect(said.arrival.earliest).toBeLessThanOrEqual(truth);
      expect(said.arrival.latest ?? Infinity).toBeGreaterThanOrEqual(truth);
    }),
  );
});

test('all times shifted shift the arrival and nothing else', () => {
  fc.assert(
    fc.property(cooling, fc.integer({ min: 0, max: 1.8e12 }), (fall, by) => {
      const readings = readingsOf(fall);
      const here = forecast(readings, taskOf(fall.medium));
      const there = forecast(
        readings.map((reading) => ({ ...reading, at: reading.at + by })),
        taskOf(fall.medium),
      );
      expect(there.state).toBe(here.state);
      if (!('arrival' in here) || !('arrival' in there)) return;
      expect((there.arrival.best ?? NaN) - by).toBeCloseTo(here.arrival.best ?? NaN, -1);
    }),
  );
});
