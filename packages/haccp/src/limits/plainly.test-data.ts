import { formatDuration } from '../quantity/format-duration.test-data';
import type { Figure, Verdict, VerdictKind } from './verdict';

/** Figures as "8.5 °F", "1 h 30 min" or "130 → 80 °F". */
export const plainly = ({ kind, finding, figures }: Pick<Verdict, 'kind' | 'finding' | 'figures'>) => ({
  kind,
  finding,
  ...Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, plain(figure)])),
});

export type Plainly = { kind: VerdictKind; finding: string } & Record<string, string>;

function plain(figure: Figure): string {
  if (typeof figure !== 'object') return String(figure);
  if (Array.isArray(figure)) return figure.map(plain).join(', ');
  if ('unit' in figure) return figure.unit === 'ms' ? formatDuration(Number(figure.value)) : `${figure.value} ${figure.unit}`;
  if ('at' in figure) return `at ${figure.at}`;
  if ('to' in figure) return `${figure.from.value} → ${plain(figure.to)}`;
  const own = Object.values(figure.figures ?? {}).map(plain);
  return own.length > 0 ? `${figure.code}: ${own.join(', ')}` : figure.code;
}
