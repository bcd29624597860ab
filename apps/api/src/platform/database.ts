import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient, type Prisma } from '../generated/prisma/client';
import { statementNames } from './statement-names';

export type Tx = Prisma.TransactionClient;
export type DatabaseAddress = { url: string };
export const DATABASE_ADDRESS = Symbol('address of the database');

/** The API's two doors to PostgreSQL. Both use the role that may only read and add records. */
@Injectable()
export class Database implements OnModuleDestroy {
  private readonly records: PrismaClient;
  /** For signing in, before the establishment is known. It never touches a record. */
  readonly door: PrismaClient;

  constructor(@Inject(DATABASE_ADDRESS) address: DatabaseAddress) {
    this.records = connect(address.url, 8);
    this.door = connect(address.url, 3, '-c larderbook.door=sign-in');
  }

  /** A transaction in which only this establishment's rows exist. Nothing is seen outside one. */
  transaction<T>(establishment: { establishmentId: string }, work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.open(async (tx) => {
      await tx.$queryRaw`SELECT set_config('larderbook.establishment', ${establishment.establishmentId}, true)`;
      return work(tx);
    });
  }

  /** A transaction without an establishment: `begin_write` names it. For the ledger only. */
  open<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.records.$transaction(work, { maxWait: 10_000, timeout: 30_000 });
  }

  async onModuleDestroy(): Promise<void> {
    await Promise.all([this.records.$disconnect(), this.door.$disconnect()]);
  }
}

/** Whatever a PostgreSQL of one's own says: moments are in UTC, and compiling a query takes longer than any of ours. */
const always = '-c timezone=UTC -c jit=off';

function connect(url: string, connections: number, options = ''): PrismaClient {
  const pool = { connectionString: url, max: connections, options: `${always} ${options}` };
  return new PrismaClient({ adapter: new PrismaPg(pool, { statementNameGenerator: statementNames() }) });
}
