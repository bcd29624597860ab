import type { LimitRowShown, ReplyOf, listLimitSets, showLimitSet } from '@larderbook/contracts';
import {
  limitSetById, limitSets, newerEditionOf, sayCondition, sayFigureOf, sayRow, usualSetOf, type LimitRow, type LimitSet,
} from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import type { PlansUsing } from './plans-using.queries';

type SetHead = ReplyOf<typeof listLimitSets>['sets'][number];

const usual = new Set<string>(Object.values(usualSetOf));

/** Every published set, the usual one of each jurisdiction first. */
export const listSets = (): SetHead[] => limitSets.map(headOf).sort((a, b) => Number(b.usual) - Number(a.usual));

/** The figures of one set in words, and the newest edition that has taken its place by `now`. Throws `no-such-set`. */
export function showSet(setId: string, usedBy: PlansUsing, now: Date): ReplyOf<typeof showLimitSet> {
  const set = knownSet(setId);
  const newer = newerEditionOf(limitSets, { setId, today: now.toISOString().slice(0, 10) });
  return { set: headOf(set), newer: newer && headOf(newer), rows: set.rows.map((row) => rowOf(row, usedBy)) };
}

export function knownSet(setId: string): LimitSet {
  const set = limitSetById(setId);
  if (!set) throw new Problem('no-such-set', { detail: `There is no set of published limits “${setId}”.` });
  return set;
}

export const headOf = ({ id, jurisdiction, title, edition, validFrom, rows }: LimitSet): SetHead => ({
  setId: id, jurisdiction, title, edition, validFrom, usual: usual.has(id), rows: rows.length,
});

const rowOf = (row: LimitRow, usedBy: PlansUsing): LimitRowShown => ({
  rowId: row.id,
  title: row.title,
  purpose: row.purpose,
  says: sayFigureOf(row),
  table: row.limit.kind === 'dwell' ? row.limit.rows.map((printed) => sayRow(printed, printed.at['°F'] === undefined ? '°C' : '°F')) : [],
  paragraph: row.paragraph,
  force: row.force,
  known: row.known,
  source: row.limit.source,
  validFrom: row.validFrom,
  validUntil: row.validUntil,
  conditions: row.conditions.map(sayCondition),
  note: row.note,
  usedBy: row.limit.kind === 'figure' ? [] : usedBy(row.limit),
});
