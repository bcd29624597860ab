import { z } from 'zod';
import type { EnteredMass, FigureUnit } from '@larderbook/haccp';
import { fault } from './fault';

/** Counts the decimals of the shortest text of the number. */
const decimals = (most: number) => (value: number) => {
  const text = String(value);
  return !text.includes('e') && (text.split('.')[1] ?? '').length <= most;
};

export const languageTags = ['en', 'es'] as const;
export const language = z.enum(languageTags);

export const id = z.uuid().toLowerCase();
export const name = z
  .string()
  .trim()
  .min(1, fault('write-a-name'))
  .max(120, fault('at-most-characters', { most: 120 }));
export const words = (most = 2000) => z.string().trim().max(most, fault('at-most-characters', { most }));
export const sentence = (what: string) =>
  z
    .string()
    .trim()
    .min(3, what)
    .max(2000, fault('at-most-characters', { most: 2000 }));
const thisAge = (text: string) => /^2[01]\d\d-/.test(text);
export const instant = z.iso.datetime({ offset: true, error: fault('give-date-and-time') }).refine(thisAge, fault('check-the-year'));
export const day = z.iso.date(fault('give-a-date')).refine(thisAge, fault('check-the-year'));
export const count = z
  .number()
  .int(fault('whole-pieces'))
  .min(1, fault('at-least', { least: 1 }))
  .max(100_000, fault('at-most', { most: 100_000 }));

export const massUnits = ['g', 'kg', 'oz', 'lb'] as const;
export const mass = z.object({
  value: z
    .number(fault('weight-as-number'))
    .gt(0, fault('weight-above-zero'))
    .max(999_999, fault('at-most', { most: 999_999 }))
    .refine(decimals(3), fault('at-most-decimals', { most: 3 })),
  unit: z.enum(massUnits),
}) satisfies z.ZodType<EnteredMass>;

export const temperatureUnits = ['°C', '°F'] as const;
export const temperature = z.object({
  value: z
    .number(fault('temperature-as-number'))
    .min(-100, fault('not-below', { least: -100 }))
    .max(600, fault('not-above', { most: 600 }))
    .refine(decimals(2), fault('at-most-decimals', { most: 2 })),
  unit: z.enum(temperatureUnits),
});

export const percent = (most: number) =>
  z
    .number(fault('give-a-percentage'))
    .gt(0, fault('above-zero'))
    .max(most, fault('at-most-percent', { most }))
    .refine(decimals(4), fault('at-most-decimals', { most: 4 }));

/** A share includes 0 and 100. */
export const share = z
  .number(fault('give-a-percentage'))
  .min(0, fault('not-below-zero'))
  .max(100, fault('at-most-percent', { most: 100 }))
  .refine(decimals(4), fault('at-most-decimals', { most: 4 }));

/** The last of these are never read at a control point. */
export const figureUnits = [
  'ppm',
  '%',
  'ratio',
  'aw',
  'pH',
  'h',
  'min',
  'days',
  'log10',
  'cfu/g',
  'lb',
  'mm',
  '°C·h',
  '°F·h',
] as const satisfies readonly FigureUnit[];

export const plainUnits = ['pH', 'aw', '%', 'ratio', 'ppm', 'log10', 'cfu/g', 'min', 'h', 'days', 'mm'] as const;
export const readingUnits = [...temperatureUnits, ...plainUnits, ...massUnits] as const;
export type ReadingUnit = (typeof readingUnits)[number];

export const massReply = z.object({ value: z.number(), unit: z.enum(massUnits), grams: z.number() });
export const temperatureReply = z.object({ value: z.number(), unit: z.enum(temperatureUnits) });

export const madeBy = z.object({ personId: z.string(), name: z.string(), at: z.string(), recordedAt: z.string(), station: z.string() });

/** Flags never refuse an entry. */
const flags = [
  'in-the-future',
  'before-the-lot',
  'out-of-order',
  'recorded-late',
  'instrument-overdue',
  'instrument-checked-later',
  'instrument-failed-later',
  'instrument-unknown',
  'lot-shipped-already',
  'unusual-value',
  'not-in-formula',
] as const;
export type Flag = (typeof flags)[number];
export const flagList = z.array(z.enum(flags));
/** A later version may have written flags that this one does not know. */
export const knownFlags = (found: string[]): Flag[] => found.filter((flag): flag is Flag => (flags as readonly string[]).includes(flag));
