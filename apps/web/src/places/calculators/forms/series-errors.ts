import type { SayOf } from '@larderbook/messages';
import type { Typed } from './body-of';
import type { FormField } from './form';
import { readLines } from './read-lines';
import { readSeries } from './read-series';

/** Errors are keyed by field. */
export function seriesErrors(fields: readonly FormField[], typed: Typed, say: SayOf<'calculators-list'>): Record<string, string> {
  const wrong = fields.flatMap((field) => {
    if (field.kind !== 'series' && field.kind !== 'lines') return [];
    const text = typed[field.key] ?? '';
    const { fault } = field.kind === 'lines' ? readLines(text) : readSeries(text, field.columns);
    return fault ? [[field.key, say(fault.code, fault.figures)]] : [];
  });
  return Object.fromEntries(wrong);
}
