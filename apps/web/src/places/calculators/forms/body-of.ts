import { numberOf } from '../../../ui/keypad-text';
import type { FormField } from './form';
import { readLines } from './read-lines';
import { readSeries } from './read-series';

/** Keyed by field; a weight has a second key for its unit. */
export type Typed = Record<string, string>;

/** What is empty or cannot be read is left out, and the contract says so. */
export function bodyOf(fields: readonly FormField[], typed: Typed): Record<string, unknown> {
  return Object.fromEntries(fields.map((field) => [field.key, valueOf(field, typed)]));
}

function valueOf(field: FormField, typed: Typed): unknown {
  const text = typed[field.key] ?? '';
  switch (field.kind) {
    case 'number':
      return numberOf(text);
    case 'mass':
      return field.optional && text === '' ? undefined : { value: numberOf(text), unit: typed[unitKey(field.key)] };
    case 'series':
      return readSeries(text, field.columns).rows;
    case 'lines':
      return readLines(text).rows;
    default:
      return text || undefined;
  }
}

export const unitKey = (key: string): string => `${key}.unit`;
