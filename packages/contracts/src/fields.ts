import { z } from 'zod';
import type { EnteredMass, FigureUnit } from '@larderbook/haccp';

/** Decimals as typed: the shortest text of the number must not have more digits after the point than this. */
const decimals = (most: number) => (value: number) => {
  const text = String(value);
  return !text.includes('e') && (text.split('.')[1] ?? '').length <= most;
};

/** The languages Larderbook speaks. */
export const languageTags = ['en', 'es'] as const;
export const language = z.enum(languageTags);

export const id = z.uuid().toLowerCase();
export const name = z.string().trim().min(1, 'Write a name.').max(120, 'At most 120 characters.');
export const words = (most = 2000) => z.string().trim().max(most, `At most ${most} characters.`);
export const sentence = (what: string) => z.string().trim().min(3, what).max(2000, 'At most 2000 characters.');
const thisAge = (text: string) => /^2[01]\d\d-/.test(text);
export const instant = z.iso.datetime({ offset: true, error: 'Give the date and time.' }).refine(thisAge, 'Check the year.');
export const day = z.iso.date('Give a date.').refine(thisAge, 'Check the year.');
export const count = z.number().int('Whole pieces only.').min(1, 'At least 1.').max(100_000, 'At most 100,000.');

export const massUnits = ['g', 'kg', 'oz', 'lb'] as const;
export const mass = z.object({
  value: z
    .number('Give the weight as a number.')
    .gt(0, 'A weight is more than zero.')
    .max(999_999, 'At most 999,999.')
    .refine(decimals(3), 'At most three decimals.'),
  unit: z.enum(massUnits),
}) satisfies z.ZodType<EnteredMass>;

export const temperatureUnits = ['°C', '°F'] as const;
export const temperature = z.object({
  value: z
    .number('Give the temperature as a number.')
    .min(-100, 'Not below −100.')
    .max(600, 'Not above 600.')
    .refine(decimals(2), 'At most two decimals.'),
  unit: z.enum(temperatureUnits),
});

export const percent = (most: number) =>
  z.number('Give a percentage.').gt(0, 'More than zero.').max(most, `At most ${most} %.`).refine(decimals(4), 'At most four decimals.');

/** A share of the whole, nothing and everything included. */
export const share = z
  .number('Give a percentage.')
  .min(0, 'Not below zero.')
  .max(100, 'At most 100 %.')
  .refine(decimals(4), 'At most four decimals.');

/** Units of a figure that is worked out or analysed; the last of them are never read at a control point. */
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

/** A value read at a control point that is neither a temperature nor a weight: pH, aw, percent, or an analysed figure. */
export const plainUnits = ['pH', 'aw', '%', 'ratio', 'ppm', 'log10', 'cfu/g', 'min', 'h', 'days', 'mm'] as const;
/** Everything a number at a control point may be read in. */
export const readingUnits = [...temperatureUnits, ...plainUnits, ...massUnits] as const;
export type ReadingUnit = (typeof readingUnits)[number];

export const massReply = z.object({ value: z.number(), unit: z.enum(massUnits), grams: z.number() });
export const temperatureReply = z.object({ value: z.number(), unit: z.enum(temperatureUnits) });

/** Who and when, on every record that is shown. */
export const madeBy = z.object({ personId: z.string(), name: z.string(), at: z.string(), recordedAt: z.string(), station: z.string() });

/** Circumstances that are kept and shown, never refused. */
export const flags = [
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
export const flagWords: Record<Flag, string> = {
  'in-the-future': 'dated in the future',
  'before-the-lot': 'dated before the lot was started',
  'out-of-order': 'entered out of order',
  'recorded-late': 'recorded more than 15 minutes after it was taken',
  'instrument-overdue': 'instrument overdue for its check',
  'instrument-checked-later': 'the check of its instrument was entered only afterwards',
  'instrument-failed-later': 'its instrument failed the next check',
  'instrument-unknown': 'no instrument named',
  'lot-shipped-already': 'recorded after the lot was shipped',
  'unusual-value': 'outside the plausible range, confirmed by the person',
  'not-in-formula': 'not in the formula of the lot',
};
/** Flags from the database, where a later version may have written ones that this one does not know. */
export const knownFlags = (found: string[]): Flag[] => found.filter((flag): flag is Flag => (flags as readonly string[]).includes(flag));
