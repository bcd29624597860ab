import type { PlanLimitData } from '@larderbook/documents';
import { kindOf, timeOf, type CriticalLimit, type TemperatureUnit } from '@larderbook/haccp';
import type { Telling } from './telling';

/** Up to this many rows stand in the limit's own line. */
const said = 3;

export const planLimitOnPaper = (limit: CriticalLimit, unit: TemperatureUnit, { say, line, limits }: Telling): PlanLimitData => ({
  printed: limits.sayLimit(limit, unit),
  source: limit.source,
  conditions: limits.sayConditions(limit.conditions),
  rows: rowsOf(limit, unit, limits),
  judged:
    [
      ...('authority' in limit ? [say('supported-by', { authority: limit.authority })] : []),
      ...('longestGapSeconds' in limit ? [say('longest-gap', { gap: line(timeOf(limit.longestGapSeconds * 1000)) })] : []),
    ].join(' ') || undefined,
});

function rowsOf(limit: CriticalLimit, unit: TemperatureUnit, { sayRow }: Telling['limits']): string[] | undefined {
  const rows = kindOf(limit).rows(limit);
  return rows.length > said ? rows.map((row) => sayRow(row, unit)) : undefined;
}
