import pg from 'pg';
import { CannotStart } from './cannot-start';
import { connected } from './connected';
import type { DatabaseUrls } from './embedded-postgres';

type Role = { name: string; version: number; is_member: boolean; is_unbound: boolean; changes: string | null };

/** The first migration makes this role. Its members may read and add records. */
const group = 'larderbook_api';

/** Throws CannotStart for a role that could change a record or see past its establishment. */
export async function bindApiRole({ ownerUrl, apiUrl }: DatabaseUrls): Promise<void> {
  const role = await connected(apiUrl, describe);
  if (role.version < 150_000) throw new CannotStart('Larderbook needs PostgreSQL 15 or later: DATABASE_URL leads to an older one.');
  if (role.is_unbound || role.changes) {
    throw new CannotStart(
      `The role ${role.name} of DATABASE_URL may change records (${role.changes ?? 'it is above row security'}): ` +
        'give the API a plain role that is no superuser, owns no table and has neither BYPASSRLS nor CREATEROLE.',
    );
  }
  if (!role.is_member) await connected(ownerUrl, (owner) => admit(owner, role.name));
}

async function describe(api: pg.Client): Promise<Role> {
  const { rows } = await api.query<Role>(`
    SELECT rolname AS name, current_setting('server_version_num')::int AS version, pg_has_role(oid, '${group}', 'USAGE') AS is_member,
      rolsuper OR rolbypassrls OR rolcreaterole AS is_unbound,
      (SELECT 'it could alter ' || min(relname) FROM pg_class
       WHERE relnamespace = 'public'::regnamespace AND relkind IN ('r', 'p') AND relname NOT LIKE 'sign\\_in%'
         AND (has_table_privilege(pg_class.oid, 'UPDATE, DELETE, TRUNCATE') OR pg_has_role(relowner, 'MEMBER')
           OR relname LIKE 'ledger\\_%' AND has_table_privilege(pg_class.oid, 'INSERT'))) AS changes
    FROM pg_roles WHERE rolname = current_user`);
  if (!rows[0]) throw new Error('A connection without a role');
  return rows[0];
}

/** Processes that start together may each grant this; granting twice does no harm. */
async function admit(owner: pg.Client, name: string): Promise<void> {
  const command = `GRANT ${group} TO ${owner.escapeIdentifier(name)}`;
  try {
    await owner.query('SELECT pg_advisory_lock(hashtext($1))', [group]);
    await owner.query(command);
  } catch (failure) {
    throw new CannotStart(`The owner's role cannot let the API's role in: run "${command}" as an administrator of the database.`, {
      cause: failure,
    });
  }
}
