import type { CriticalLimit, LimitSet } from '@larderbook/haccp';
import { printedWhere, type PrintedRow } from './printed-where';

/** Of the sets that print a figure the one in use, else one of its jurisdiction, else any; none for one's own figure. */
export function builtOn(limit: CriticalLimit, inUse: LimitSet | undefined): PrintedRow | undefined {
  const printed = printedWhere(limit);
  const own = printed.find(({ set }) => set === inUse);
  return own ?? printed.find(({ set }) => set.jurisdiction === inUse?.jurisdiction) ?? printed[0];
}

export const sayEdition = ({ title, edition }: LimitSet): string =>
  title.includes(edition) ? title : `${title}, edition ${edition}`;
