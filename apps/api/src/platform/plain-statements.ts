import { AsyncLocalStorage } from 'node:async_hooks';
import { PrismaPg } from '@prisma/adapter-pg';
import { ColumnTypeEnum, type ColumnType, type SqlQueryable, type Transaction } from '@prisma/driver-adapter-utils';
import { Prisma } from '../generated/prisma/client';

type Text = TemplateStringsArray | Prisma.Sql;
type Queryable = SqlQueryable | Promise<SqlQueryable>;

export type Plain = { $queryRaw<Rows = unknown>(text: Text, ...values: unknown[]): Promise<Rows> };

export class Driver extends PrismaPg {
  private readonly asking = new AsyncLocalStorage<(opened: Transaction) => void>();

  override async connect(): ReturnType<PrismaPg['connect']> {
    const adapter = await super.connect();
    const start = adapter.startTransaction.bind(adapter);
    adapter.startTransaction = async (isolation) => {
      const opened = await start(isolation);
      this.asking.getStore()?.(opened);
      return opened;
    };
    return adapter;
  }

  /** `keep` receives the driver's side of the transaction that `work` opens. */
  onTransaction<T>(keep: (opened: Transaction) => void, work: () => Promise<T>): Promise<T> {
    return this.asking.run(keep, work);
  }
}

/**
 * Written SQL goes straight to the driver, in the same transaction: Prisma's engine takes longer over a statement than
 * PostgreSQL.
 */
export function withPlainStatements<Client extends object>(client: Client, driver: Queryable): Client & Plain {
  const $queryRaw = (text: Text, ...values: unknown[]) => rowsOf(driver, 'sql' in text ? text : Prisma.sql(text, ...values));
  const get = (whole: Client, name: string | symbol): unknown => (name === '$queryRaw' ? $queryRaw : Reflect.get(whole, name));
  return new Proxy(client, { get }) as Client & Plain;
}

async function rowsOf(driver: Queryable, { text, values }: Prisma.Sql): Promise<object[]> {
  const args = values.map((value) => (Prisma.Decimal.isDecimal(value) ? value.toFixed() : value));
  const argTypes = args.map(() => ({ scalarType: 'unknown', arity: 'scalar' }) as const);
  const { columnNames, columnTypes, rows } = await (await driver).queryRaw({ sql: text, args, argTypes });
  const columns = columnNames.map((name, place) => ({ name, place, read: readerOf[columnTypes[place] ?? 0] }));
  return rows.map((values) => {
    const row: Record<string, unknown> = {};
    for (const { name, place, read } of columns) {
      const value = values[place] ?? null;
      row[name] = value === null || !read ? value : read(value);
    }
    return row;
  });
}

/** The driver gives these types as text. */
const readerOf: Partial<Record<ColumnType, (said: unknown) => unknown>> = {
  [ColumnTypeEnum.Int64]: (said) => BigInt(String(said)),
  [ColumnTypeEnum.Numeric]: (said) => new Prisma.Decimal(String(said)),
  [ColumnTypeEnum.Date]: (said) => new Date(String(said)),
  [ColumnTypeEnum.DateTime]: (said) => new Date(String(said)),
  [ColumnTypeEnum.Json]: (said) => JSON.parse(String(said)) as unknown,
};
