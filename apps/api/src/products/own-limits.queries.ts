import type { ReplyOf, recordOwnLimits } from '@larderbook/contracts';
import type { LimitSet } from '@larderbook/haccp';
import { personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';

export type OwnEdition = LimitSet & { own: NonNullable<ReplyOf<typeof recordOwnLimits>['own']> };

type Row = Pick<LimitSet, 'id' | 'title' | 'edition' | 'validFrom' | 'rows'> & {
  replaces: string | null;
  replacedBy: string | null;
  recordedAt: Date;
  recordedBy: string;
};

/** Latest first. The contract checked the rows before they were written. */
export async function ownEditions(tx: Tx): Promise<OwnEdition[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT s.id, s.title, s.edition, s.valid_from::text AS "validFrom", s.rows, s.replaces_id AS replaces,
      later.id AS "replacedBy", s.recorded_at AS "recordedAt", s.recorded_by AS "recordedBy"
    FROM own_limit_set s LEFT JOIN own_limit_set later ON later.replaces_id = s.id
    ORDER BY s.seq DESC`;
  if (rows.length === 0) return [];
  const names = await personNames(tx);
  return rows.map(({ replaces, replacedBy, recordedAt, recordedBy, ...set }) => ({
    ...set,
    jurisdiction: 'own',
    replaces: replaces ?? undefined,
    own: {
      recordedAt: recordedAt.toISOString(),
      recordedBy: names.get(recordedBy) ?? '',
      replaces: replaces ?? undefined,
      replacedBy: replacedBy ?? undefined,
    },
  }));
}
