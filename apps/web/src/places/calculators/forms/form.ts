import type { CriticalLimit } from '@larderbook/haccp';
import type { RouteShape, calculation } from '@larderbook/contracts';
import type { ParametersOf, WordsOf } from '@larderbook/messages';
import type { z } from 'zod';

type Words = WordsOf<'calculations'>;

/** Codes that take no figure. */
export type AskedCode = { [Code in keyof Words]: keyof ParametersOf<Words[Code]> extends never ? Code : never }[keyof Words];
type ListCode = keyof WordsOf<'calculators-list'>;

/** A choice without a name is called by its value: kg, cm. */
export type Choice = { value: string; name?: AskedCode };

/** `key` is the place in the request: `meat.value`. */
export type FormField = { key: string; label: AskedCode; hint?: AskedCode; optional?: boolean } & (
  | { kind: 'number'; decimals?: number; belowZero?: boolean; unit?: string; unitSaid?: AskedCode }
  | { kind: 'mass'; first?: 'heavy' | 'light' | 'g' }
  | { kind: 'unit' }
  | { kind: 'choice'; choices: readonly Choice[]; first?: string }
  | { kind: 'limit'; kinds: readonly CriticalLimit['kind'][] }
  | { kind: 'series'; columns: readonly Column[] }
  | { kind: 'text' }
  | { kind: 'lines' }
);

/** The first column may be written as h:mm; with `asClock` it must be, as it lasts for days. */
export type Column = { key: string; asClock?: true };

export type CalculatorName = ListCode extends infer Code ? (Code extends `${infer Name}.about` ? Name : never) : never;
export type Group = Extract<ListCode, `group-${string}`>;

export type CalculatorForm = {
  name: CalculatorName;
  group: Group;
  route: RouteShape & { method: 'POST'; body: z.ZodObject; returns: typeof calculation };
  fields: readonly FormField[];
};
