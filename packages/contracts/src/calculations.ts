import { z } from 'zod';
import type { Working } from '@larderbook/haccp';
import { mass, massUnits, percent, temperatureUnits } from './fields';
import { source, verdict } from './limits';
import { everyone, route } from './route';

const fact = z.object({ what: z.string(), said: z.string() });

/** A calculation with its working. Never a record. */
export const working = z.object({
  title: z.string(),
  given: z.array(fact),
  steps: z.array(z.object({ what: z.string(), rule: z.string(), putIn: z.string(), gives: z.string() })),
  results: z.array(fact.extend({ value: z.number().optional(), unit: z.string().optional() })),
  verdicts: z.array(verdict),
  notes: z.array(z.string()),
  sources: z.array(source),
  cautions: z.array(z.string()),
}) satisfies z.ZodType<Working>;

const number = (least: number, most: number, decimals = 3) =>
  z
    .number('Give a number.')
    .min(least, `Not below ${least}.`)
    .max(most, `Not above ${most}.`)
    .refine((value) => Number(value.toFixed(decimals)) === value, `At most ${decimals} decimals.`);
const degreesIn = number(-100, 600, 2);
const unit = z.enum(temperatureUnits);
/** The key of a published limit, as `/published-limits` lists them. */
const published = z.string().min(1, 'Choose a published limit.').max(80);
const readings = z
  .array(z.object({ minutes: number(0, 60 * 24 * 30), value: degreesIn }))
  .min(1, 'Give at least one reading.')
  .max(500, 'At most 500 readings.');

const calculation = <const N extends string, const B extends z.ZodObject>(name: N, summary: string, body: B) =>
  route({
    method: 'POST',
    path: `/calculations/${name}`,
    summary: `${summary}. Worked out, not recorded`,
    roles: everyone,
    body,
    returns: working,
    problems: ['cannot-be-worked-out'],
  });

export const workOutCure = calculation(
  'cure-for-meat',
  'How much curing salt a meat block takes, and whether the scale can weigh it',
  z.object({ meat: mass, strength: percent(100), limit: published, scale: mass }),
);
export const workOutHold = calculation(
  'time-at-temperature',
  'How long a core has to stay at a temperature, by the printed row',
  z.object({ value: degreesIn, unit, limit: published }),
);
export const workOutCurve = calculation(
  'curve-against-limit',
  'Readings of a cook or a chill against a published limit',
  z.object({ unit, limit: published, readings }),
);
export const workOutInstrument = calculation(
  'limit-with-instrument',
  'What a thermometer must show so that a limit is held whatever its error',
  z.object({ figure: degreesIn, error: number(0, 50, 2), unit, side: z.enum(['min', 'max']) }),
);
export const workOutBoiling = calculation(
  'thermometer-in-boiling-water',
  'What a thermometer should show in boiling water, here and today',
  z
    .object({ hectopascal: number(300, 1100, 2).optional(), metres: number(-430, 9000, 1).optional(), unit })
    .refine(({ hectopascal, metres }) => (hectopascal === undefined) !== (metres === undefined), {
      error: 'Give either the pressure of the air or the height.',
      path: ['hectopascal'],
    }),
);

export const workOutLethality = calculation(
  'lethality-of-cook',
  'A cook by the printed table and the lethality its curve adds up to',
  z.object({ unit, limit: published, readings }),
);
export const workOutGrowth = calculation(
  'growth-while-cooling',
  'What C. perfringens may have done while a cooked product cooled',
  z.object({ unit, species: z.enum(['beef', 'pork', 'chicken', 'mixed or unknown']), cured: z.enum(['yes', 'no']), readings }),
);
export const workOutArrival = calculation(
  'arrival-at-target',
  'When a core will be at its target',
  z.object({
    unit, way: z.enum(['cooling', 'heating']), target: degreesIn, medium: degreesIn,
    withinMinutes: number(0, 60 * 24 * 30).optional(), readings,
  }),
);
export const cureMethods = ['chopped', 'dry-cured', 'pumped', 'massaged', 'immersed', 'immersed until even', 'per batch'] as const;
export const workOutIngoing = calculation(
  'ingoing-by-method',
  'Ingoing parts per million by the way the cure gets into the meat',
  z.object({ method: z.enum(cureMethods), salt: mass, strength: percent(100), weight: mass, meat: mass.optional(), pump: percent(100).optional() }),
);
const analysed = number(0, 100);
export const workOutComposition = calculation(
  'composition-by-analysis',
  'Added water, moisture to protein and salt in the water phase from analyses',
  z.object({ moisture: analysed, protein: analysed, fat: analysed, salt: analysed, pH: number(0, 14).optional(), aw: number(0, 1).optional() }),
);
export const workOutListeria = calculation(
  'listeria-in-the-pack',
  'What Listeria may do in a chilled pack, within the range of the model',
  z.object({
    waterPhaseSalt: analysed, pH: number(0, 14), nitritePpm: number(0, 1000).optional(), phenolsPpm: number(0, 1000).optional(),
    lacticPpm: number(0, 100_000).optional(), aceticPpm: number(0, 100_000).optional(), celsius: number(-5, 50), hours: number(0, 24 * 400),
  }),
);

export const workOutFermentation = calculation(
  'fermentation-by-degree-hours',
  'Degree-hours of a fermentation until the pH is down',
  z.object({ unit, readings: readings.element.extend({ pH: number(0, 14) }).array().min(1, 'Give at least one reading.').max(500, 'At most 500 readings.') }),
);
export const workOutDrying = calculation(
  'loss-in-drying',
  'Weight lost in drying, and when the loss aimed at will be there',
  z.object({
    unit: z.enum(massUnits),
    percent: percent(99),
    weighings: z.array(z.object({ days: number(0, 1000), weight: number(0.001, 999_999) })).min(1, 'Give at least one weight.').max(200, 'At most 200 weights.'),
  }),
);
export const workOutFreezing = calculation(
  'freezing-of-pork',
  'Pork frozen against trichinae, by the freezer and the thickness or by the centre',
  z
    .object({ what: z.enum(['freezer', 'centre']), thickness: number(0.1, 200).optional(), thicknessUnit: z.enum(['in', 'cm']), unit, readings })
    .refine(({ what, thickness }) => what === 'centre' || thickness !== undefined, { error: 'Give how thick the pieces are.', path: ['thickness'] }),
);
