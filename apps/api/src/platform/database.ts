import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import type { SqlQueryable } from '@prisma/driver-adapter-utils';
import pg from 'pg';
import { PrismaClient, type Prisma } from '../generated/prisma/client';
import { GatheringSocket } from './gathering-socket';
import { Driver, withPlainStatements, type Plain } from './plain-statements';
import { statementNames } from './statement-names';

export type Tx = Omit<Prisma.TransactionClient, '$queryRaw'> & Plain;
export type DatabaseAddress = { url: string };
export const DATABASE_ADDRESS = Symbol('address of the database');

/** Both connections use the role that may only read and add records. */
@Injectable()
export class Database implements OnModuleDestroy {
  private readonly records: Line;
  private readonly atTheDoor: Line;
  /** Signing in happens before the establishment is known. This connection never touches a record. */
  readonly door: PrismaClient & Plain;

  constructor(@Inject(DATABASE_ADDRESS) address: DatabaseAddress) {
    this.records = connect(address.url, 8);
    this.atTheDoor = connect(address.url, 3, '-c larderbook.door=sign-in');
    this.door = withPlainStatements(this.atTheDoor.client, this.atTheDoor.driver.connect());
  }

  /** Row security shows only this establishment's rows, and none outside a transaction. */
  transaction<T>(establishment: { establishmentId: string }, work: (tx: Tx) => Promise<T>): Promise<T> {
    const { establishmentId } = establishment;
    return this.open(async (tx) => {
      const named = tx.$queryRaw`SELECT set_config('larderbook.establishment', ${establishmentId}, true)`;
      const [done] = await Promise.all([work(tx), named]);
      return done;
    });
  }

  /** Only the ledger uses this: `begin_write` names the establishment. */
  open<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    const { client, driver } = this.records;
    let own: SqlQueryable;
    return driver.onTransaction(
      (opened) => (own = opened),
      () => client.$transaction((tx) => work(withPlainStatements(tx, own)), { maxWait: 10_000, timeout: 30_000 }),
    );
  }

  async onModuleDestroy(): Promise<void> {
    for (const { client, pool } of [this.records, this.atTheDoor]) {
      await client.$disconnect();
      await pool.end();
    }
  }
}

type Line = { pool: pg.Pool; driver: Driver; client: PrismaClient };

/** JIT is off because compiling a query takes longer than running any of ours. */
const always = '-c timezone=UTC -c jit=off';

function connect(connectionString: string, max: number, options = ''): Line {
  const stream = () => new GatheringSocket();
  const pool = new pg.Pool({ connectionString, max, options: `${always} ${options}`, pipeline: true, stream });
  pool.on('error', () => {}); // the pool replaces an idle connection that breaks
  const driver = new Driver(pool, { statementNameGenerator: statementNames() });
  return { pool, driver, client: new PrismaClient({ adapter: driver }) };
}
