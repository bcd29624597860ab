import type { PlanContent } from '@larderbook/contracts';
import { figureOf, newerEditionOf, type CriticalLimit, type LimitSet } from '@larderbook/haccp';
import { sayEdition } from './built-on';
import { otherwise } from './otherwise';
import type { Reasons } from './reasons-in';

type Asked = { own: readonly LimitSet[]; today: string };

/** The plan and its lots stay as they are. */
export function ownReasons({ controlPoints }: PlanContent, own: readonly LimitSet[], now: Date, reasons: Reasons): string[] {
  const asked = { own, today: now.toISOString().slice(0, 10) };
  return controlPoints.flatMap(({ name, limits }) => [...new Set(limits.flatMap(({ limit }) => reasonsFor(name, limit, asked, reasons)))]);
}

/** Two sets may hold the same figure; within one set the first found counts. */
function reasonsFor(point: string, limit: CriticalLimit, { own, today }: Asked, reasons: Reasons): string[] {
  const figure = figureOf(limit);
  const found = new Map<string, string>();
  for (const set of own) {
    const row = set.rows.find((each) => figureOf(each.limit) === figure);
    const newer = row && newerEditionOf(own, { setId: set.id, today });
    if (!row || !newer || found.has(newer.id)) continue;
    const match = newer.rows.find(({ id }) => id === row.id);
    const edition = sayEdition(newer, false, reasons);
    const says = match ? otherwise(row, match, edition, reasons) : reasons.say('held-no-more', { edition });
    if (says) found.set(newer.id, reasons.say('reassess', { point, built: sayEdition(set, false, reasons), otherwise: says }));
  }
  return [...found.values()];
}
