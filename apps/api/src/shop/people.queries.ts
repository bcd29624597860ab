import type { Role } from '@larderbook/contracts';
import type { Tx } from '../platform/database';

export type ListedPerson = { personId: string; name: string; userName: string; roles: Role[]; since: string };
type Row = Omit<ListedPerson, 'since'> & { since: Date };

/** The latest grant counts. People who have left stay in the list. */
export async function listPeople(tx: Tx): Promise<ListedPerson[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT p.id AS "personId", p.name, p.user_name AS "userName", g.roles, p.recorded_at AS since
    FROM person p
    CROSS JOIN LATERAL (
      SELECT r.roles FROM role_grant r
      WHERE r.establishment_id = p.establishment_id AND r.person_id = p.id
      ORDER BY r.seq DESC LIMIT 1
    ) g
    ORDER BY p.seq`;
  return rows.map((row) => ({ ...row, since: row.since.toISOString() }));
}
