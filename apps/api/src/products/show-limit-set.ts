import type { LimitRowShown, ReplyOf, listLimitSets, showLimitSet } from '@larderbook/contracts';
import { isOfKind, kindOf, limitSetById, limitSets, newerEditionOf, usualSetOf, type LimitRow, type LimitSet } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import type { OwnEdition } from './own-limits.queries';
import type { PlansUsing } from './plans-using.queries';

type SetHead = ReplyOf<typeof listLimitSets>['sets'][number];

const usual = new Set<string>(Object.values(usualSetOf));

/** The usual set of each jurisdiction comes first, one's own editions last. */
export const listSets = (own: readonly OwnEdition[]): SetHead[] => [
  ...limitSets.map(headOf).sort((a, b) => Number(b.usual) - Number(a.usual)),
  ...own.map(headOf),
];

/** `newer` is the newest edition that has replaced the set by `now`. Throws `no-such-set`. */
export function showSet(
  setId: string,
  { own, usedBy, now, limits }: { own: readonly OwnEdition[]; usedBy: PlansUsing; now: Date; limits: LimitTeller },
): ReplyOf<typeof showLimitSet> {
  const set = knownSet(setId, own);
  const newer = newerEditionOf([...limitSets, ...own], { setId, today: now.toISOString().slice(0, 10) });
  return { set: headOf(set), newer: newer && headOf(newer), rows: set.rows.map((row) => rowOf(row, usedBy, limits)) };
}

/** Throws `no-such-set`. */
export function knownSet(setId: string, own: readonly LimitSet[]): LimitSet | OwnEdition {
  const set = limitSetById(setId) ?? own.find(({ id }) => id === setId);
  if (!set) throw new Problem('no-such-set', told('no-such-set', { set: setId }));
  return set;
}

export function headOf(set: LimitSet | OwnEdition): SetHead {
  const { id, jurisdiction, title, edition, validFrom, rows } = set;
  const head = { setId: id, jurisdiction, title, edition, validFrom, usual: usual.has(id), rows: rows.length };
  return 'own' in set ? { ...head, own: set.own } : head;
}

const rowOf = (row: LimitRow, usedBy: PlansUsing, { formatPrinted, sayRow, sayCondition }: LimitTeller): LimitRowShown => ({
  rowId: row.id,
  title: row.title,
  purpose: row.purpose,
  says: formatPrinted(row.limit),
  table: kindOf(row.limit)
    .rows(row.limit)
    .map((printed) => sayRow(printed, printed.at['°F'] === undefined ? '°C' : '°F')),
  paragraph: row.paragraph,
  force: row.force,
  known: row.known,
  source: row.limit.source,
  validFrom: row.validFrom,
  validUntil: row.validUntil,
  conditions: row.conditions.map(sayCondition),
  note: row.note,
  usedBy: isOfKind(row.limit, 'figure') ? [] : usedBy(row.limit),
});
