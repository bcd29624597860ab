import type { Typed } from './body-of';
import type { FormField } from './form';
import { readSeries } from './read-series';

/** What is wrong with the lines of a series, beside its field. */
export function seriesErrors(fields: readonly FormField[], typed: Typed): Record<string, string> {
  const wrong = fields.flatMap((field) => {
    if (field.kind !== 'series') return [];
    const { error } = readSeries(typed[field.key] ?? '', field.columns.map(({ key }) => key));
    return error ? [[field.key, error]] : [];
  });
  return Object.fromEntries(wrong);
}
