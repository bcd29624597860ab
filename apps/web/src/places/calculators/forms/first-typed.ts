import type { MassUnit, TemperatureUnit } from '@larderbook/haccp';
import { unitKey, type Typed } from './body-of';
import type { FormField } from './form';

/** Units begin as the shop's, and choices at their usual one. */
export function firstTyped(fields: readonly FormField[], shop: { degrees: TemperatureUnit; isMetric: boolean }): Typed {
  return Object.fromEntries(fields.flatMap((field) => first(field, shop)));
}

function first(field: FormField, { degrees, isMetric }: { degrees: TemperatureUnit; isMetric: boolean }): [string, string][] {
  if (field.kind === 'unit') return [[field.key, degrees]];
  if (field.kind === 'choice') return [[field.key, field.first ?? field.choices[0]?.value ?? '']];
  if (field.kind !== 'mass') return [];
  const units: Record<'heavy' | 'light' | 'g', MassUnit> = {
    heavy: isMetric ? 'kg' : 'lb',
    light: isMetric ? 'g' : 'oz',
    g: 'g',
  };
  return [[unitKey(field.key), units[field.first ?? 'heavy']]];
}
