import { z } from 'zod';
import { clarificationWords } from './clarifications';
import { amendment, correction } from './corrections';
import { flagList, id, instant, madeBy, name, readingUnits, temperatureUnits, words } from './fields';
import { humidityKept } from './humidity-kept';
import { verdict, verdicts } from './verdicts';
import { everyone, floor, route } from './route';
import { fault } from './fault';

const number = (least: number, most: number) =>
  z
    .number(fault('value-as-number'))
    .min(least, fault('not-below', { least }))
    .max(most, fault('not-above', { most }))
    .refine(
      (value) => !String(value).includes('e') && (String(value).split('.')[1] ?? '').length <= 3,
      fault('at-most-decimals', { most: 3 }),
    );
/** The largest is a count of germs, or a lot in grams. */
const measured = number(-100, 1_000_000);
const isDegrees = (unit: string) => (temperatureUnits as readonly string[]).includes(unit);
/** A test weight may be heavy. */
const shown = number(-100, 100_000);

const entered = z.union([
  z
    .object({ value: measured, unit: z.enum(readingUnits) })
    .refine(({ value, unit }) => !isDegrees(unit) || value <= 1000, { path: ['value'], message: fault('not-above', { most: 1000 }) }),
  z.object({ answer: z.boolean(), seen: words(400), humidity: humidityKept.optional() }),
]);

export const recordReading = route({
  method: 'PUT',
  path: '/readings/:readingId',
  summary: 'Record one reading at a control point of a lot; it is judged at once',
  roles: floor,
  body: z.object({
    lotId: id,
    controlPointId: id,
    entered,
    probe: words(40).optional(),
    instrumentId: id.optional(),
    takenAt: instant,
    /** Outside the plausible range; the person is sure. */
    sure: z.boolean().optional(),
    amends: id.optional(),
    reason: words().optional(),
  }),
  returns: z.object({ readingId: z.string(), controlPointId: z.string(), verdicts, flags: flagList, deviationId: z.string().optional() }),
  problems: [
    'not-found',
    'no-such-control-point',
    'wrong-kind-of-value',
    'implausible-value',
    'reason-missing',
    'already-amended',
    'sent-differently',
  ],
});

export const endStage = route({
  method: 'PUT',
  path: '/stage-ends/:stageEndId',
  summary: 'Say that a cook or a chill is finished; its limits are then judged as a whole',
  roles: floor,
  body: z.object({ lotId: id, controlPointId: id, takenAt: instant, ...amendment }),
  returns: z.object({ stageEndId: z.string(), controlPointId: z.string(), verdicts, deviationId: z.string().optional() }),
  problems: [
    'not-found',
    'no-such-control-point',
    'wrong-kind-of-value',
    'stage-ended-already',
    'reason-missing',
    'already-amended',
    'in-the-future',
    'sent-differently',
  ],
});

export const clarifyReadings = route({
  method: 'PUT',
  path: '/clarifications/:clarificationId',
  summary: 'Say, with a reason, what readings in doubt were; the control point is judged again',
  roles: floor,
  body: z.object({
    lotId: id,
    controlPointId: id,
    readingIds: z
      .array(id)
      .min(1, fault('choose-the-readings'))
      .max(500, fault('at-most-entries', { most: 500 }))
      .refine((ids) => new Set(ids).size === ids.length, fault('each-reading-once')),
    word: z.enum(clarificationWords),
    reason: words().optional(),
    takenAt: instant,
  }),
  returns: z.object({ clarificationId: z.string(), controlPointId: z.string(), verdicts, deviationId: z.string().optional() }),
  problems: [
    'not-found',
    'no-such-control-point',
    'wrong-kind-of-value',
    'reason-missing',
    'already-amended',
    'in-the-future',
    'sent-differently',
  ],
});

export const instrumentKinds = ['thermometer', 'scale', 'pH meter', 'other'] as const;
export const instrumentUnits = ['°C', '°F', 'g', 'kg', 'oz', 'lb', 'pH', 'aw', '%'] as const;
const calibration = z.object({
  calibrationId: z.string(),
  rowId: z.string(),
  method: z.string(),
  expected: z.number(),
  observed: z.number(),
  unit: z.enum(instrumentUnits),
  verdict,
  action: z.string(),
  made: madeBy,
});
export const instrument = z.object({
  instrumentId: z.string(),
  name: z.string(),
  kind: z.enum(instrumentKinds),
  unit: z.enum(instrumentUnits),
  tolerance: z.number(),
  checkEveryDays: z.number().int(),
  lastCheck: calibration.optional(),
  /** Oldest first. */
  corrections: z.array(correction),
  dueAt: z.string().optional(),
  overdue: z.boolean(),
});
export const listInstruments = route({
  method: 'GET',
  path: '/instruments',
  summary: 'Thermometers and scales, with their last check',
  roles: everyone,
  returns: z.object({ instruments: z.array(instrument) }),
  problems: [],
});
export const recordInstrument = route({
  method: 'PUT',
  path: '/instruments/:instrumentId',
  summary: 'Add an instrument',
  roles: floor,
  body: z.object({
    name,
    kind: z.enum(instrumentKinds),
    unit: z.enum(instrumentUnits),
    tolerance: number(0.001, 1000),
    checkEveryDays: z.number().int().min(1).max(400),
  }),
  returns: instrument,
  problems: ['sent-differently'],
});
export const recordCalibration = route({
  method: 'PUT',
  path: '/calibrations/:calibrationId',
  summary: 'Check an instrument against a known value',
  roles: floor,
  body: z.object({
    instrumentId: id,
    method: z.enum(['ice point', 'boiling point', 'reference instrument', 'test weight']),
    expected: shown,
    observed: shown,
    action: words(400),
    takenAt: instant,
    ...amendment,
  }),
  returns: instrument,
  problems: ['not-found', 'reason-missing', 'already-amended', 'in-the-future', 'sent-differently'],
});
