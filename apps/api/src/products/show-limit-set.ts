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
export const listSets = (own: readonly OwnEdition[], { sayName }: LimitTeller): SetHead[] => [
  ...limitSets.map((set) => headOf(set, sayName)).sort((a, b) => Number(b.usual) - Number(a.usual)),
  ...own.map((set) => headOf(set)),
];

/** `newer` is the newest edition that has replaced the set by `now`. Throws `no-such-set`. */
export function showSet(
  setId: string,
  { own, usedBy, now, limits }: { own: readonly OwnEdition[]; usedBy: PlansUsing; now: Date; limits: LimitTeller },
): ReplyOf<typeof showLimitSet> {
  const set = knownSet(setId, own);
  const newer = newerEditionOf([...limitSets, ...own], { setId, today: now.toISOString().slice(0, 10) });
  const { sayName } = limits;
  const told = { ...limits, sayName: namesIn(set, limits) };
  return { set: headOf(set, sayName), newer: newer && headOf(newer, sayName), rows: set.rows.map((row) => rowOf(row, usedBy, told)) };
}

/** What an owner wrote is nobody's to translate. */
export const namesIn = (set: LimitSet | OwnEdition, { sayName }: LimitTeller): LimitTeller['sayName'] => ('own' in set ? asTyped : sayName);

const asTyped = (text: string): string => text;

/** Throws `no-such-set`. */
export function knownSet(setId: string, own: readonly LimitSet[]): LimitSet | OwnEdition {
  const set = limitSetById(setId) ?? own.find(({ id }) => id === setId);
  if (!set) throw new Problem('no-such-set', told('no-such-set', { set: setId }));
  return set;
}

export function headOf(set: LimitSet | OwnEdition, sayName: LimitTeller['sayName'] = asTyped): SetHead {
  const { id, jurisdiction, title, edition, validFrom, rows } = set;
  const head = { setId: id, jurisdiction, edition, validFrom, usual: usual.has(id), rows: rows.length };
  return 'own' in set ? { ...head, title, own: set.own } : { ...head, title: sayName(title) };
}

const rowOf = (row: LimitRow, usedBy: PlansUsing, { formatPrinted, sayRow, sayCondition, sayName }: LimitTeller): LimitRowShown => ({
  rowId: row.id,
  title: sayName(row.title),
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
  note: row.note && sayName(row.note),
  usedBy: isOfKind(row.limit, 'figure') ? [] : usedBy(row.limit),
});
