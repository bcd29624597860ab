import { kindOf } from '../kinds/registry';
import type { CodedAs } from '../limits/coded';
import { limitFault } from '../limits/limit-fault';
import { boundOf } from '../quantity/bound';
import type { Condition } from './condition';
import { faultsOfPairs } from './faults-of-pairs';
import type { LimitRow, LimitSet } from './limit-set';
import type { RowFaultCode, SetFault, WholeSetFaultCode } from './set-fault';

type Because = SetFault['because'];
type OfSet = CodedAs<WholeSetFaultCode>;
type OfRow = CodedAs<RowFaultCode>;

export function faultsOfSet(set: LimitSet): SetFault[] {
  const whole: OfSet[] = [
    ...(set.title && set.edition ? [] : [{ code: 'set-nameless' } as const]),
    ...(isDate(set.validFrom) ? [] : [{ code: 'counts-from-no-date', figures: { date: set.validFrom } } as const]),
  ];
  const own = whole.map((because) => ({ set: set.id, because }));
  const rows = set.rows.flatMap((row, index) => {
    const isTwice = set.rows.findIndex(({ id }) => id === row.id) < index;
    const faults: Because[] = [...(isTwice ? [{ code: 'id-twice' } as const] : []), ...faultsOfRow(row)];
    return faults.map((because) => ({ set: set.id, row: row.id, because }));
  });
  return [...own, ...rows];
}

/** Ids are used once; a replaced set exists and is older. */
export function faultsOfSets(sets: readonly LimitSet[]): SetFault[] {
  const among = sets.flatMap((set, index) => {
    const before = sets.find(({ id }) => id === set.replaces);
    const faults: OfSet[] = [
      ...(sets.findIndex(({ id }) => id === set.id) < index ? [{ code: 'set-id-twice' } as const] : []),
      ...(set.replaces && !before ? [{ code: 'replaced-missing', figures: { set: set.replaces } } as const] : []),
      ...(before && !(before.validFrom < set.validFrom) ? [{ code: 'replaced-newer', figures: { set: before.id } } as const] : []),
      ...(before && before.jurisdiction !== set.jurisdiction ? [{ code: 'replaced-of-another' } as const] : []),
    ];
    return faults.map((because) => ({ set: set.id, because }));
  });
  return [...among, ...sets.flatMap(faultsOfSet)];
}

export function faultsOfRow(row: LimitRow): Because[] {
  const { limit, paragraph, known, validFrom, validUntil, isDefault } = row;
  const { citation, edition, confirmed } = limit.source;
  const fault = limitFault(limit);
  const own: OfRow[] = [
    ...(/^[a-z0-9.]+(-[a-z0-9.]+)*$/.test(row.id) ? [] : [{ code: 'id-unusable' } as const]),
    ...(row.title.trim() ? [] : [{ code: 'title-missing' } as const]),
    ...(citation.trim() && edition.trim() && paragraph.trim() ? [] : [{ code: 'source-missing' } as const]),
    ...(confirmed === (known === 'read in the source') ? [] : [{ code: 'confirmed-unread' } as const]),
    ...(isDefault && !confirmed ? [{ code: 'default-unconfirmed' } as const] : []),
    ...(isDate(validFrom) ? [] : [{ code: 'no-such-date', figures: { date: validFrom } } as const]),
    ...(validUntil === undefined || (isDate(validUntil) && validUntil >= validFrom) ? [] : [{ code: 'ends-before-it-counts' } as const]),
    ...faultsOfFigures(row),
    ...faultsOfPairs(row),
    ...row.conditions.flatMap(faultsOfCondition),
  ];
  return [...own, ...(fault ? [fault] : []), ...kindOf(limit).slips(limit)];
}

function faultsOfFigures({ limit }: LimitRow): OfRow[] {
  const bounded = 'signs' in limit ? limit : undefined;
  const isIdle = (['min', 'max'] as const).some((side) => bounded?.signs?.[side] && bounded[side] === undefined);
  const isPrinted = kindOf(limit)
    .temperatures(limit)
    .every((figure) => Number.isFinite(boundOf(figure)['°C']));
  return [...(isIdle ? [{ code: 'sign-without-figure' } as const] : []), ...(isPrinted ? [] : [{ code: 'figure-missing' } as const])];
}

function faultsOfCondition(condition: Condition): OfRow[] {
  if ('least' in condition) return Number.isSafeInteger(condition.least) && condition.least > 0 ? [] : [{ code: 'condition-no-figure' }];
  if ('among' in condition) return condition.among.length > 0 ? [] : [{ code: 'condition-names-nothing' }];
  return condition.says.trim() ? [] : [{ code: 'condition-says-nothing' }];
}

/** A year, a month or a day that exists. */
function isDate(text: string): boolean {
  const match = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(text);
  if (!match) return false;
  const [, year, month = '01', day = '01'] = match;
  const time = Date.parse(`${year}-${month}-${day}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(`${year}-${month}-${day}`);
}
