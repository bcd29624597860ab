import pg from 'pg';
import { connected } from '../../../apps/api/src/platform/connected';
import type { BenchShop } from '../larder/bench-shop';
import type { Larder } from '../larder/open-larder';
import type { ReadingParameters } from './reading-sql';

/** Of each shop the last reading recorded there, so that the baseline writes rows like ours. */
export const readingParameters = ({ database }: Larder, shops: readonly BenchShop[]): Promise<ReadingParameters[]> =>
  connected(database.ownerUrl, async (owner) => {
    const all: ReadingParameters[] = [];
    for (const { establishmentId } of shops) all.push(await lastReading(owner, establishmentId));
    return all;
  });

async function lastReading(owner: pg.Client, establishmentId: string): Promise<ReadingParameters> {
  const { rows } = await owner.query<ReadingParameters>(
    `SELECT r.establishment_id AS establishment, r.lot_id AS lot, r.control_point_id AS point, r.plan_id AS plan, r.instrument_id AS instrument,
       r.judged::text, r.recorded_by AS person, encode(e.request_digest, 'hex') AS digest, e.reply
     FROM reading r JOIN ledger_entry e ON e.establishment_id = r.establishment_id AND e.seq = r.seq
     WHERE r.establishment_id = $1 ORDER BY r.seq DESC LIMIT 1`,
    [establishmentId],
  );
  const [last] = rows;
  if (!last) throw new Error('Nothing has been recorded in this shop yet');
  return last;
}
