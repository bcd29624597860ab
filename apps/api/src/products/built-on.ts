import type { CriticalLimit, LimitSet } from '@larderbook/haccp';
import type { Reasons } from './reasons-in';
import { printedWhere, type PrintedRow } from './printed-where';

/**
 * Prefers the set in use, then a set on a matter it has too; within each, the same jurisdiction and the newest.
 * Undefined for a figure of one's own.
 */
export function builtOn(limit: CriticalLimit, inUse: LimitSet | undefined): PrintedRow | undefined {
  const printed = printedWhere(limit);
  const own = printed.find(({ set }) => set === inUse);
  const shared = printed.filter(({ row }) => inUse?.rows.some(({ id }) => id === row.id));
  return own ?? newestOf(shared, inUse) ?? newestOf(printed, inUse);
}

function newestOf(printed: PrintedRow[], inUse: LimitSet | undefined): PrintedRow | undefined {
  const of = (jurisdiction: string | undefined) => printed.findLast(({ set }) => set.jurisdiction === jurisdiction);
  return of(inUse?.jurisdiction) ?? of(printed[0]?.set.jurisdiction);
}

export function sayEdition({ title: printed, edition }: LimitSet, isInUse: boolean, { say, limits }: Reasons): string {
  const title = limits.sayName(printed);
  const named = printed.includes(edition) ? title : say('edition', { title, edition });
  return isInUse ? say('edition-here', { edition: named }) : named;
}
