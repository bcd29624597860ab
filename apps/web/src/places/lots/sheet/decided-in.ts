import type { Band } from './lanes';
import type { SheetRow } from './sheet-rows';

/**
 * The word of a stage stands at the reading of its own control point that decided it, once of a round of probes, or
 * where that reading is folded away.
 */
export function isDecidedIn(row: SheetRow, { controlPointId, decidedAt }: Pick<Band, 'controlPointId' | 'decidedAt'>): boolean {
  if (decidedAt === undefined) return false;
  if (row.kind === 'folded') return row.lines.some((line) => line.controlPointId === controlPointId && line.at === decidedAt);
  if (row.kind !== 'line' || row.continues) return false;
  const { kind, at, controlPointId: own } = row.line;
  return kind === 'reading' && at === decidedAt && own === controlPointId;
}
