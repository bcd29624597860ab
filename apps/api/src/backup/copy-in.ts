import { once } from 'node:events';
import type pg from 'pg';

/** The types of the driver leave these out. */
type CopyConnection = pg.Connection & {
  sendCopyFromChunk(chunk: Buffer): void;
  endCopyFrom(): void;
  sendCopyFail(because: string): void;
};

/** Sends rows to COPY … FROM STDIN, as fast as PostgreSQL takes them. What fails in the rows takes back the statement. */
export const copyIn = (client: pg.Client, sql: string, rows: AsyncIterable<Buffer>): Promise<void> =>
  new Promise((resolve, reject) => {
    let failure: unknown;
    const feed = async (connection: CopyConnection): Promise<void> => {
      for await (const chunk of rows) {
        if (failure) return;
        connection.sendCopyFromChunk(chunk);
        if (connection.stream.writableNeedDrain) await once(connection.stream, 'drain');
      }
      if (!failure) connection.endCopyFrom();
    };
    client.query({
      submit: (connection: pg.Connection) => connection.query(sql),
      handleCopyInResponse: (connection: CopyConnection) =>
        void feed(connection).catch((inRows: unknown) => {
          failure ??= inRows;
          connection.sendCopyFail('The rows ended before their end');
        }),
      handleCommandComplete: () => {},
      handleError: (refusal: Error) => {
        failure ??= refusal;
        reject(failure);
      },
      handleReadyForQuery: () => resolve(),
    });
  });
