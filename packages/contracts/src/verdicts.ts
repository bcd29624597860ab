import { z } from 'zod';
import type { Coded, Found, Part, PlainFigure, QuantityUnit, Running, Verdict, Phrase } from '@larderbook/haccp';
import { massUnits, temperatureUnits } from './fields';

/** Whoever shows these codes and figures puts them into words. */
const otherUnits = [
  'ms',
  'pH',
  'aw',
  '%',
  'ppm',
  '°C·h',
  '°F·h',
  'log10',
  'ratio',
  'cm',
  'mm',
  'in',
  'cfu/g',
  'min',
  'h',
  'days',
  'hPa',
  'm',
] as const;
export const quantity = z.object({
  value: z.string(),
  unit: z.enum([...temperatureUnits, ...massUnits, ...otherUnits]) satisfies z.ZodType<QuantityUnit>,
});
export const plainFigure = z.union([
  quantity,
  z.object({ from: quantity, to: quantity }),
  z.object({ at: z.number() }),
  z.number(),
  z.string(),
]) satisfies z.ZodType<PlainFigure>;
const plainWord = z.object({ code: z.string(), figures: z.record(z.string(), plainFigure).optional() });
export const word = z.object({
  code: z.string(),
  figures: z.record(z.string(), z.union([plainFigure, plainWord])).optional(),
}) satisfies z.ZodType<Phrase>;
const listed = z.array(z.union([z.string(), quantity, word]));
const figures = z.record(z.string(), z.union([plainFigure, word, listed]));
const found = z.object({ finding: z.string(), figures, measure: z.string().optional() }) satisfies z.ZodType<Found>;
const kind = z.enum(['met', 'missed', 'undetermined']);
const parts = z.array(found.extend({ kind }) satisfies z.ZodType<Part>);

export const coded = z.object({ code: z.string(), figures: figures.optional() }) satisfies z.ZodType<Coded>;

const instants = { deadline: z.number().optional(), since: z.number().optional(), until: z.number().optional() };
const running = coded.extend(instants) satisfies z.ZodType<Running>;

export const verdict = found.extend({
  kind,
  parts: parts.optional(),
  also: z.array(found).optional(),
  butFor: found.extend({ parts: parts.optional() }).optional(),
  then: coded.optional(),
  notes: z.array(coded),
  running: running.optional(),
  still: z.literal('cooling').optional(),
  probe: z.string().optional(),
  spare: z.number().optional(),
}) satisfies z.ZodType<Verdict>;

export const verdicts = z.array(z.object({ limitId: z.string(), verdict }));
