import { kindOf } from '../kinds/registry';
import { limitFault } from '../limits/limit-fault';
import type { Condition } from './condition';
import { faultsOfPairs } from './faults-of-pairs';
import type { LimitRow, LimitSet } from './limit-set';
import { sayFigureOf } from './say-row';

/** What is wrong with one row of a set, or with the set itself where `row` is absent. */
export type SetFault = { set: string; row?: string; because: string };

/** Everything that keeps a set from being used; empty when it is sound. */
export function faultsOfSet(set: LimitSet): SetFault[] {
  const own = [
    ...(set.title && set.edition ? [] : ['The set has no title or no edition.']),
    ...(isDate(set.validFrom) ? [] : [`"${set.validFrom}" is no date from which the set counts.`]),
  ].map((because) => ({ set: set.id, because }));
  const rows = set.rows.flatMap((row, index) => {
    const isTwice = set.rows.findIndex(({ id }) => id === row.id) < index;
    const because = [...(isTwice ? ['The id is used twice.'] : []), ...faultsOfRow(row)];
    return because.map((sentence) => ({ set: set.id, row: row.id, because: sentence }));
  });
  return [...own, ...rows];
}

/** The sets together: ids used once, and every set that is replaced is there and older. */
export function faultsOfSets(sets: readonly LimitSet[]): SetFault[] {
  const among = sets.flatMap((set, index) => {
    const before = sets.find(({ id }) => id === set.replaces);
    const because = [
      ...(sets.findIndex(({ id }) => id === set.id) < index ? ['The id of the set is used twice.'] : []),
      ...(set.replaces && !before ? [`The set it replaces, ${set.replaces}, is not there.`] : []),
      ...(before && !(before.validFrom < set.validFrom) ? [`It is not newer than ${before.id}.`] : []),
      ...(before && before.jurisdiction !== set.jurisdiction ? ['It replaces a set of another jurisdiction.'] : []),
    ];
    return because.map((sentence) => ({ set: set.id, because: sentence }));
  });
  return [...among, ...sets.flatMap(faultsOfSet)];
}

export function faultsOfRow(row: LimitRow): string[] {
  const { limit, paragraph, known, validFrom, validUntil, isDefault } = row;
  const { citation, edition, confirmed } = limit.source;
  const fault = limitFault(limit);
  return [
    ...(/^[a-z0-9.]+(-[a-z0-9.]+)*$/.test(row.id) ? [] : ['The id is not in small letters, digits and hyphens.']),
    ...(row.title.trim() ? [] : ['The row has no title.']),
    ...(citation.trim() && edition.trim() && paragraph.trim()
      ? []
      : ['The source’s citation or edition, or the paragraph or file, is missing.']),
    ...(confirmed === (known === 'read in the source') ? [] : ['Confirmed is only what was read in the source.']),
    ...(isDefault && !confirmed ? ['An unconfirmed figure is never a default.'] : []),
    ...(isDate(validFrom) ? [] : [`"${validFrom}" is no date.`]),
    ...(validUntil === undefined || (isDate(validUntil) && validUntil >= validFrom) ? [] : ['It ends before it counts.']),
    ...(fault ? [fault] : []),
    ...faultsOfSigns(row),
    ...kindOf(limit).slips(limit),
    ...faultsOfPairs(row),
    ...row.conditions.flatMap(faultsOfCondition),
  ];
}

function faultsOfSigns(row: LimitRow): string[] {
  const { limit } = row;
  if (kindOf(limit).takenAs === 'attestation') return [];
  const bounded = 'signs' in limit ? limit : undefined;
  const isIdle = (['min', 'max'] as const).some((side) => bounded?.signs?.[side] && bounded[side] === undefined);
  const said = sayFigureOf(row);
  return [
    ...(isIdle ? ['A sign stands beside no figure.'] : []),
    ...(said.every((line) => /[≤≥<>]|within|for|no holding time/.test(line)) ? [] : ['It prints without its comparison.']),
    ...(said.some((line) => /undefined|NaN(?!O)|no figure/.test(line)) ? ['It prints without its figure.'] : []),
  ];
}

function faultsOfCondition(condition: Condition): string[] {
  if ('least' in condition)
    return Number.isSafeInteger(condition.least) && condition.least > 0 ? [] : ['A condition has no usable figure.'];
  if ('among' in condition) return condition.among.length > 0 ? [] : ['A condition names nothing.'];
  return condition.says.trim() ? [] : ['A condition says nothing.'];
}

/** A year, a month or a day that exists. */
function isDate(text: string): boolean {
  const match = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(text);
  if (!match) return false;
  const [, year, month = '01', day = '01'] = match;
  const time = Date.parse(`${year}-${month}-${day}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(`${year}-${month}-${day}`);
}
