import type { CriticalLimit } from '@larderbook/haccp';
import type { RouteShape, calculation } from '@larderbook/contracts';
import type { z } from 'zod';

/** What is asked for on a form. `key` is the place in the request: `meat.value`. */
export type FormField = { key: string; label: string; hint?: string; optional?: boolean } & (
  | { kind: 'number'; decimals?: number; belowZero?: boolean; unit?: string }
  | { kind: 'mass'; first?: 'heavy' | 'light' | 'g' }
  | { kind: 'unit' }
  | { kind: 'choice'; choices: readonly { value: string; name: string }[]; first?: string }
  | { kind: 'limit'; kinds: readonly CriticalLimit['kind'][] }
  | { kind: 'series'; columns: readonly Column[] }
  | { kind: 'text' }
  | { kind: 'lines' }
);

/** One number of each line of a series; the first may be written as h:mm, and has to be where it lasts for days. */
export type Column = { key: string; name: string; asClock?: true };

/** One calculation as a person fills it in. */
export type CalculatorForm = {
  name: string;
  group: string;
  title: string;
  about: string;
  route: RouteShape & { method: 'POST'; body: z.ZodObject; returns: typeof calculation };
  fields: readonly FormField[];
};
