import type { Correction, SheetLine } from './sheet-line';

/** A row before corrected ones are folded under the one that counts. */
export type Entry = Omit<SheetLine, 'corrects' | 'deviation'> & {
  amendedBy?: string;
  amends?: string;
  reason: string;
  deviationId?: string;
};

/**
 * Rows that correct one another become one line; the last counts. A row whose successor is not among the entries stays
 * a line: nothing recorded may vanish from the sheet.
 */
export function foldAmendments(entries: Entry[]): (SheetLine & { deviationId?: string })[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const replaced = new Set(entries.flatMap(({ amends }) => (amends && byId.has(amends) ? [amends] : [])));
  return entries.filter(({ id }) => !replaced.has(id)).map((entry) => lineOf(entry, chainBefore(entry, byId)));
}

/** Oldest first, each with the entry that replaced it. */
function chainBefore(entry: Entry, byId: Map<string, Entry>): { old: Entry; by: Entry }[] {
  const chain: { old: Entry; by: Entry }[] = [];
  let by = entry;
  let old = by.amends === undefined ? undefined : byId.get(by.amends);
  while (old) {
    chain.unshift({ old, by });
    by = old;
    old = by.amends === undefined ? undefined : byId.get(by.amends);
  }
  return chain;
}

function lineOf({ amendedBy, amends, reason, ...line }: Entry, chain: { old: Entry; by: Entry }[]) {
  const deviationId = line.deviationId ?? chain.findLast(({ old }) => old.deviationId)?.old.deviationId;
  return { ...line, deviationId, corrects: chain.map(correctionOf) };
}

const correctionOf = ({ old, by }: { old: Entry; by: Entry }): Correction => ({
  id: old.id,
  what: old.what,
  value: old.value ?? '',
  who: old.who ?? '',
  at: old.at,
  reason: by.reason,
});
