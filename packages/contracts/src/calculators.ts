import { z } from 'zod';
import { heldProducts, pieceShapes } from '@larderbook/haccp';
import { calculator, publishedKey as published, typedNumber as number } from './calculator';
import { mass, massUnits, percent, temperatureUnits } from './fields';
import { fault } from './fault';

const degreesIn = number(-100, 600, 2);
const unit = z.enum(temperatureUnits);
const readings = z
  .array(z.object({ minutes: number(0, 60 * 24 * 30), value: degreesIn }))
  .min(1, fault('one-reading-at-least'))
  .max(500, fault('at-most-readings', { most: 500 }));

export const calculateCure = calculator(
  'cure-for-meat',
  'How much curing salt a meat block takes, and whether the scale can weigh it',
  z.object({ meat: mass, strength: percent(100), limit: published, scale: mass }),
);
export const calculateHold = calculator(
  'time-at-temperature',
  'How long a core has to stay at a temperature, by the printed row',
  z.object({ value: degreesIn, unit, limit: published }),
);
export const calculateCurve = calculator(
  'curve-against-limit',
  'Readings of a cook or a chill against a published limit',
  z.object({
    unit,
    limit: published,
    readings,
    /** `shape` is of the piece whose core was read; `thinnest` in mm. A stirred product has no thickness. */
    shape: z.enum([...pieceShapes, 'stirred']).optional(),
    thinnest: number(1, 2000, 3).optional(),
  }),
);
export const calculateInstrument = calculator(
  'limit-with-instrument',
  'What a thermometer must show so that a limit is held whatever its error',
  z.object({ figure: degreesIn, error: number(0, 50, 2), unit, side: z.enum(['min', 'max']) }),
);
/** A barometer gives the first, which is meant where nothing is said; a weather report gives the second. */
export const pressuresOfAir = ['at the place', 'reduced to sea level'] as const;
export const calculateBoiling = calculator(
  'thermometer-in-boiling-water',
  'What a thermometer should show in boiling water, here and today',
  z
    .object({
      hectopascal: number(300, 1100, 2).optional(),
      metres: number(-430, 9000, 1).optional(),
      pressureIs: z.enum(pressuresOfAir).optional(),
      unit,
    })
    .refine(({ hectopascal, metres }) => hectopascal !== undefined || metres !== undefined, {
      error: fault('pressure-or-height'),
      path: ['hectopascal'],
    })
    .refine(
      ({ hectopascal, metres, pressureIs }) => hectopascal === undefined || pressureIs !== pressuresOfAir[1] || metres !== undefined,
      {
        error: fault('height-of-the-place'),
        path: ['metres'],
      },
    ),
);

export const calculateLethality = calculator(
  'lethality-of-cook',
  'A cook by the printed table and the lethality its curve adds up to',
  z.object({ unit, limit: published, readings }),
);
export const calculateGrowth = calculator(
  'growth-while-cooling',
  'What C. perfringens may have done while a cooked product cooled',
  z.object({ unit, species: z.enum(['beef', 'pork', 'chicken', 'mixed or unknown']), cured: z.enum(['yes', 'no']), readings }),
);
export const calculateArrival = calculator(
  'arrival-at-target',
  'When a core will be at its target',
  z.object({
    unit,
    way: z.enum(['cooling', 'heating']),
    target: degreesIn,
    medium: degreesIn,
    withinMinutes: number(0, 60 * 24 * 30).optional(),
    readings,
  }),
);
export const cureMethods = ['chopped', 'dry-cured', 'pumped', 'massaged', 'immersed', 'immersed until even', 'per batch'] as const;
export const calculateIngoing = calculator(
  'ingoing-by-method',
  'Ingoing parts per million by the way the cure gets into the meat',
  z.object({
    method: z.enum(cureMethods),
    salt: mass,
    strength: percent(100),
    weight: mass,
    meat: mass.optional(),
    pump: percent(100).optional(),
  }),
);
const analysed = number(0, 100);
export const calculateComposition = calculator(
  'composition-by-analysis',
  'Added water, moisture to protein and salt in the water phase from analyses',
  z.object({
    moisture: analysed,
    protein: analysed,
    fat: analysed,
    salt: analysed,
    pH: number(0, 14).optional(),
    aw: number(0, 1).optional(),
  }),
);
export const calculateListeria = calculator(
  'listeria-in-the-pack',
  'What Listeria may do in a chilled pack, within the range of the model',
  z.object({
    waterPhaseSalt: analysed,
    pH: number(0, 14),
    nitritePpm: number(0, 1000).optional(),
    phenolsPpm: number(0, 1000).optional(),
    lacticPpm: number(0, 100_000).optional(),
    aceticPpm: number(0, 100_000).optional(),
    celsius: number(-5, 50),
    hours: number(0, 24 * 400),
  }),
);

export const calculateFermentation = calculator(
  'fermentation-by-degree-hours',
  'Degree-hours of a fermentation until the pH is down',
  z.object({
    unit,
    readings: readings.element
      .extend({ pH: number(0, 14) })
      .array()
      .min(1, fault('one-reading-at-least'))
      .max(500, fault('at-most-readings', { most: 500 })),
  }),
);
export const calculateDrying = calculator(
  'loss-in-drying',
  'Weight lost in drying, and when the loss aimed at will be there',
  z.object({
    unit: z.enum(massUnits),
    percent: percent(99),
    weighings: z
      .array(z.object({ days: number(0, 1000), weight: number(0.001, 999_999) }))
      .min(1, fault('one-weight-at-least'))
      .max(200, fault('at-most-weights', { most: 200 })),
  }),
);
export const calculateFreezing = calculator(
  'freezing-of-pork',
  'Pork frozen against trichinae, by the freezer and the thickness or by the centre',
  z
    .object({
      what: z.enum(['freezer', 'centre']),
      thickness: number(0.1, 200).optional(),
      thicknessUnit: z.enum(['in', 'cm']),
      unit,
      readings,
    })
    .refine(({ what, thickness }) => what === 'centre' || thickness !== undefined, {
      error: fault('how-thick-the-pieces'),
      path: ['thickness'],
    }),
);

export const calculateHumidity = calculator(
  'humidity-while-cooking',
  'Whether a cook was humid for long enough, by one of the four options',
  z.object({
    option: z.enum(['1', '2', '3', '4']),
    cooking: number(1, 60 * 72),
    humid: number(0, 60 * 72),
    endpoint: degreesIn,
    unit,
  }),
);
export const calculateEquivalentHold = calculator(
  'hold-at-another-temperature',
  'A hold that is to stand for 70 °C for 2 min: the printed row, and the law behind it as support',
  z.object({ product: z.enum(heldProducts), value: degreesIn, unit }),
);
