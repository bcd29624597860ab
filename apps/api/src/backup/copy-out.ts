import { Readable } from 'node:stream';
import type pg from 'pg';

const gatheredBytes = 65_536;

/** What COPY … TO STDOUT sends. PostgreSQL waits while nobody reads. */
export const copyOut = (client: pg.Client, sql: string): Readable => client.query(new CopyOut(sql));

/** The driver hands each message of its answer to the query that is at work by these names. */
class CopyOut extends Readable implements pg.Submittable {
  private connection: pg.Connection | undefined;
  private gathered: Buffer[] = [];
  private size = 0;

  constructor(private readonly sql: string) {
    super();
  }

  submit(connection: pg.Connection): void {
    this.connection = connection;
    connection.query(this.sql);
  }

  /** The driver uses the memory of a message again. */
  handleCopyData({ chunk }: { chunk: Buffer }): void {
    this.gathered.push(Buffer.from(chunk));
    this.size += chunk.length;
    if (this.size >= gatheredBytes) this.pass();
  }

  handleCommandComplete(): void {
    this.pass();
  }

  handleReadyForQuery(): void {
    this.push(null);
  }

  handleError(failure: Error): void {
    this.destroy(failure);
  }

  override _read(): void {
    this.connection?.stream.resume();
  }

  /** Lets the connection go on, or it could not be closed. */
  override _destroy(failure: Error | null, done: (failure?: Error | null) => void): void {
    this.connection?.stream.resume();
    done(failure);
  }

  private pass(): void {
    if (this.size === 0) return;
    const wantsMore = this.push(Buffer.concat(this.gathered));
    this.gathered = [];
    this.size = 0;
    if (!wantsMore) this.connection?.stream.pause();
  }
}
