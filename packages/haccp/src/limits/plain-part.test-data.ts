import { formatDuration } from '../quantity/format-duration.test-data';
import type { LinePart } from './line-part';
import type { Figure } from './verdict';

export function plainPart(part: LinePart | Figure): string {
  if (typeof part !== 'object') return String(part);
  if (Array.isArray(part)) return part.map(plainPart).join(', ');
  if ('code' in part) return [part.code, ...Object.values(part.figures ?? {}).map(plainPart)].join(' ');
  if ('sum' in part) return part.sum.map(plainPart).join('');
  if ('limit' in part) return part.limit.kind;
  if ('verdict' in part) return `(${part.verdict})`;
  if ('at' in part) return `${Math.round(part.at / 60_000)}'`;
  if ('to' in part) return `${part.from.value} → ${part.to.value} ${part.to.unit}`;
  if (part.unit === 'ms') return formatDuration(Number(part.value));
  return part.unit === 'ratio' ? part.value : `${part.value} ${part.unit}`;
}
