import pg from 'pg';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cloneDatabase, type TestDatabase } from '../support/database';

/** Nobody's records: sessions end, passwords change, tries are forgotten. Everything else is a record. */
const signInTables = ['sign_in', 'sign_in_account', 'sign_in_attempt', 'sign_in_session', 'sign_in_verification'];
/** Written by the ledger's own functions alone. */
const chain = ['ledger_entry', 'ledger_text'];
const [ours, theirs] = [v7(), v7()];

let database: TestDatabase;
let api: pg.Client;
let owner: pg.Client;
let tables: Table[];
let views: Table[];

type Table = {
  name: string;
  owner: string;
  establishment: string | null;
  privileges: string[];
  columnsToChange: string[];
  secured: boolean;
  isView: boolean;
  /** A view that runs as whoever reads it stands under the row security of its tables. */
  runsAsReader: boolean;
  policies: { using: string; check: string; permissive: boolean; command: string; roles: string[] }[];
};

/** Every table as the catalogue knows it, with what the role that asks may do. */
const catalogue = `
  SELECT c.relname::text AS name, pg_get_userbyid(c.relowner)::text AS owner, c.relrowsecurity AS secured,
    c.relkind = 'v' AS "isView", 'security_invoker=true' = ANY(coalesce(c.reloptions, '{}')) AS "runsAsReader",
    (SELECT attname::text FROM pg_attribute WHERE attrelid = c.oid AND NOT attisdropped
      AND attname = CASE c.relname WHEN 'establishment' THEN 'id' ELSE 'establishment_id' END) AS establishment,
    ARRAY(SELECT p FROM unnest('{SELECT,INSERT,UPDATE,DELETE,TRUNCATE,REFERENCES,TRIGGER}'::text[])
      WITH ORDINALITY AS u (p, n) WHERE has_table_privilege(c.oid, p) ORDER BY n) AS privileges,
    ARRAY(SELECT attname::text FROM pg_attribute WHERE attrelid = c.oid AND attnum > 0 AND NOT attisdropped
      AND has_column_privilege(c.oid, attnum, 'UPDATE')) AS "columnsToChange",
    (SELECT coalesce(json_agg(json_build_object('using', qual, 'check', with_check, 'command', cmd, 'roles', roles,
      'permissive', permissive = 'PERMISSIVE')), '[]')
      FROM pg_policies WHERE schemaname = 'public' AND tablename = c.relname) AS policies
  FROM pg_class c
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p', 'f', 'v', 'm') ORDER BY 1`;

const connect = async (connectionString: string): Promise<pg.Client> => {
  const client = new pg.Client({ connectionString });
  await client.connect();
  return client;
};

beforeAll(async () => {
  database = await cloneDatabase();
  api = await connect(database.apiUrl);
  owner = await connect(database.ownerUrl);
  await api.query(`SELECT set_config('larderbook.establishment', $1, false)`, [ours]);
  const found = (await api.query<Table>(catalogue)).rows;
  tables = found.filter(({ isView }) => !isView);
  views = found.filter(({ isView }) => isView);
});
afterAll(async () => {
  await Promise.all([api.end(), owner.end()]);
  await database.drop();
});

const isMigrations = ({ name }: Table) => name === '_prisma_migrations';
const records = () => tables.filter((table) => ![...signInTables, ...chain].includes(table.name) && !isMigrations(table));

const foreignKeysOf = async (table: string) =>
  (
    await owner.query<{ name: string; columns: string[] }>(
      `SELECT conname::text AS name, ARRAY(SELECT attname::text FROM pg_attribute WHERE attrelid = conrelid AND attnum = ANY(conkey)) AS columns
       FROM pg_constraint WHERE contype = 'f' AND conrelid = $1::regclass`,
      [table],
    )
  ).rows;

/** Problems one by one, so that a table which is wrong is named. */
async function refusals(sql: (table: Table) => string): Promise<Record<string, string>> {
  const told: Record<string, string> = {};
  for (const table of records()) {
    told[table.name] = await api.query(sql(table)).then(
      () => 'done',
      (refusal: Error) => refusal.message,
    );
  }
  return told;
}
const eachRecord = (said: (table: Table) => string) => Object.fromEntries(records().map((table) => [table.name, said(table)]));

describe('by the catalogue, the role of the API', () => {
  test('may read and add records, read the chain, keep the sign-in tables, and nothing else', () => {
    const found = Object.fromEntries(tables.map(({ name, privileges }) => [name, privileges.join(' ')]));
    expect(found).toEqual({
      ...eachRecord(() => 'SELECT INSERT'),
      ...Object.fromEntries(chain.map((name) => [name, 'SELECT'])),
      ...Object.fromEntries(signInTables.map((name) => [name, 'SELECT INSERT UPDATE DELETE'])),
      _prisma_migrations: '',
    });
    expect(records().length).toBeGreaterThan(25);
  });

  test('may only read the rows that count, and sees them as whoever reads them', () => {
    expect(views.map(({ name, privileges, runsAsReader }) => [name, privileges.join(' '), runsAsReader])).toEqual(
      views.map(({ name }) => [name, 'SELECT', true]),
    );
    expect(views.map(({ name }) => name)).toEqual(expect.arrayContaining(['receipt_now', 'packing_now', 'shipment_now']));
  });

  test('may change no single column of a record either', () => {
    const changeable = tables.filter(({ columnsToChange }) => columnsToChange.length > 0).map(({ name }) => name);
    expect(changeable).toEqual(signInTables);
  });

  test('adds no record that is not noted, and names no row that there is not', async () => {
    const { rows } = await owner.query<{ name: string }>(
      `SELECT tgrelid::regclass::text AS name FROM pg_trigger WHERE tgfoid = 'note_records'::regproc AND tgenabled = 'O'
         AND tgtype = 4 AND tgnewtable = 'added' AND tgqual IS NULL ORDER BY 1`, // after an insert, once a statement
    );
    expect(rows.map(({ name }) => name)).toEqual(records().map(({ name }) => name));

    const ofManyKinds = ['control_point_id', 'limit_id', 'subject_id'];
    for (const table of records()) {
      const { rows: columns } = await owner.query<{ name: string }>(
        `SELECT attname::text AS name FROM pg_attribute WHERE attrelid = $1::regclass AND attnum > 0 AND NOT attisdropped
           AND (attname LIKE '%\\_id' OR attname = 'recorded_by')`,
        [table.name],
      );
      const named = columns.map(({ name }) => name).filter((name) => !ofManyKinds.includes(name));
      const keyed = (await foreignKeysOf(table.name)).flatMap(({ columns }) => columns);
      expect([table.name, named.filter((name) => !keyed.includes(name))]).toEqual([table.name, []]);
    }
  });

  test('notes nothing of tables of its own as a record', async () => {
    await api.query('CREATE TEMP TABLE role_grant (establishment_id uuid, id uuid, seq bigint)');
    const refusal: unknown = await api
      .query(`CREATE TRIGGER note AFTER INSERT ON pg_temp.role_grant REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION public.note_records()`)
      .catch((failure: unknown) => failure);
    await api.query('DROP TABLE pg_temp.role_grant');
    expect(String(refusal)).toMatch(/permission denied for function .*note_records/);
  });

  test('owns nothing, makes nothing, and stands under row security', async () => {
    const { rows } = await api.query(`
      SELECT rolsuper, rolbypassrls, rolcreaterole, rolcreatedb,
        has_schema_privilege('public', 'CREATE') AS makes_tables,
        has_database_privilege(current_database(), 'CREATE') AS makes_schemas,
        pg_has_role((SELECT datdba FROM pg_database WHERE datname = current_database()), 'MEMBER') AS is_owner
      FROM pg_roles WHERE rolname = current_user`);
    expect(Object.values(rows[0] as Record<string, boolean>)).toEqual(Array.from({ length: 7 }, () => false));
    expect(new Set(tables.map((table) => table.owner))).toEqual(new Set(['larderbook_owner']));
  });

  test('calls functions that run as their owner only where these look names up in one place', async () => {
    const { rows } = await owner.query<{ name: string; config: string[] | null }>(
      `SELECT proname::text AS name, proconfig AS config FROM pg_proc
       WHERE pronamespace = 'public'::regnamespace AND prosecdef ORDER BY 1`,
    );
    expect(rows.map(({ name }) => name)).toEqual(['append_entry', 'first_run', 'note_records', 'signed_in']);
    for (const { config } of rows) expect(config).toContain('search_path=public, pg_temp');
  });
});

describe('row security', () => {
  test('is on for every table, with the one policy that names the establishment for reading and for adding', () => {
    const under = tables.filter((table) => !isMigrations(table));
    const own = ({ name, establishment }: Table) => {
      const rule = `(${establishment} = current_establishment())`;
      const said = signInTables.includes(name) ? `(${rule} OR at_the_sign_in_door())` : rule;
      return { using: said, check: said, command: 'ALL', roles: ['public'], permissive: true };
    };
    expect(under.map(({ name, secured, policies }) => ({ name, secured, policies }))).toEqual(
      under.map((table) => ({ name: table.name, secured: true, policies: [own(table)] })),
    );
  });

  test('refuses a row of another establishment in every table, before it looks at anything else', async () => {
    const add = (establishmentId: string) => (table: Table) =>
      `INSERT INTO ${table.name} (${table.establishment}) VALUES ('${establishmentId}')`;
    expect(await refusals(add(theirs))).toEqual(eachRecord(({ name }) => `new row violates row-level security policy for table "${name}"`));
    for (const said of Object.values(await refusals(add(ours)))) expect(said).toContain('violates not-null constraint');
  });

  test('shows nothing while no establishment is named, or another one', async () => {
    const id = v7();
    for (const { name } of await foreignKeysOf('customer')) await owner.query(`ALTER TABLE customer DROP CONSTRAINT ${name}`);
    await owner.query('ALTER TABLE customer DISABLE TRIGGER USER');
    await owner.query(
      `INSERT INTO customer (establishment_id, id, seq, name, address, contact, recorded_at, recorded_by)
       VALUES ($1, $2, 1, 'Fenwick Deli', '', '', now(), $2)`,
      [ours, id],
    );
    const seenBy = async (establishmentId: string) => {
      await api.query(`SELECT set_config('larderbook.establishment', $1, false)`, [establishmentId]);
      return (await api.query<{ id: string }>('SELECT id FROM customer')).rows.map((row) => row.id);
    };
    expect([await seenBy(''), await seenBy(theirs), await seenBy(ours)]).toEqual([[], [], [id]]);
  });
});

describe('in practice the role of the API is refused', () => {
  test.each([
    ['to change a row', ({ name, establishment }: Table) => `UPDATE ${name} SET ${establishment} = ${establishment}`],
    ['to remove a row', ({ name }: Table) => `DELETE FROM ${name}`],
    ['to empty a table', ({ name }: Table) => `TRUNCATE ${name} CASCADE`],
    ['to remove a table', ({ name }: Table) => `DROP TABLE ${name} CASCADE`],
    ['to switch its triggers off', ({ name }: Table) => `ALTER TABLE ${name} DISABLE TRIGGER ALL`],
    ['to switch row security off', ({ name }: Table) => `ALTER TABLE ${name} DISABLE ROW LEVEL SECURITY`],
  ])('%s, in every table of records', async (_what, sql) => {
    const refused = /^(permission denied for|must be owner of) /;
    for (const said of Object.values(await refusals(sql))) expect(said).toMatch(refused);
  });

  test.each(chain)('to write to %s itself', async (name) => {
    const line = `INSERT INTO ${name} (establishment_id) VALUES ('${ours}')`;
    await expect(api.query(line)).rejects.toThrow('permission denied');
  });

  test.each([
    ['without a line', '', 'violates not-null constraint'],
    ['under a line that nobody closes', '1', 'violates foreign key constraint "ledger_text_establishment_id_seq_fkey"'],
    ['under another line than the next', '7', 'A record was added to establishment under line 7, which is not the next'],
  ])('to keep a record %s of the ledger', async (_how, line, refusal) => {
    await api.query(`SELECT set_config('larderbook.line', $1, false)`, [line]);
    const add = api.query(`INSERT INTO establishment (id, demonstration, recorded_at) VALUES ('${ours}', true, now())`);
    await expect(add).rejects.toThrow(refusal);
  });
});
