import { Injectable } from '@nestjs/common';
import { canonicalJson, clocksDiffer, timeOf } from '@larderbook/haccp';
import { Clock } from '../platform/clock';
import { Database, type Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { sha256 } from './sha256';

type Sent = {
  id: string;
  kind: string;
  subject?: string;
  request: object;
  /** Left out for what an instrument showed: its clock may be wrong. */
  happenedAt?: string;
};
type Writer = { personId: string; establishmentId: string; station: string };
type Earlier = { kind: string; request: string; reply: string };

/**
 * The same id with the same content gets the same answer; with other content, `sent-differently`. Writes of one
 * establishment run one after the other, so what `work` reads cannot change under it. Each write closes with one line
 * of the ledger.
 */
@Injectable()
export class RecordOnce {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  run<Kept extends object>(by: Writer, sent: Sent, work: (tx: Tx, at: Date) => Promise<Kept>): Promise<Kept> {
    const digest = sha256(canonicalJson(sent.request));
    return this.db.open(async (tx) => {
      const [earlier] = await tx.$queryRaw<Earlier[]>`
        SELECT * FROM begin_write(${by.establishmentId}::uuid, ${sent.id}::uuid)`;
      if (earlier) return answerAgain<Kept>(earlier, sent.kind, digest);

      const at = this.clock.now();
      if (sent.happenedAt !== undefined) refuseAhead(Date.parse(sent.happenedAt), at);
      const kept = await work(tx, at);
      await tx.$queryRaw`
        SELECT seq FROM append_entry(${sent.id}::uuid, ${at}, ${by.personId}::uuid, ${by.station}, ${sent.kind},
          ${sent.subject ?? sent.id}::uuid, ${digest}, ${JSON.stringify(kept)})`;
      return kept;
    });
  }
}

function answerAgain<Kept>(earlier: Earlier, kind: string, digest: string): Kept {
  if (earlier.kind !== kind || earlier.request !== digest) throw new Problem('sent-differently');
  return JSON.parse(earlier.reply) as Kept;
}

/** Throws `in-the-future`. */
function refuseAhead(happenedAt: number, now: Date): void {
  const ahead = happenedAt - now.getTime();
  if (ahead <= clocksDiffer) return;
  const minutes = Math.floor(ahead / 60_000);
  throw new Problem('in-the-future', told('ahead-of-the-clock', { ahead: timeOf(minutes * 60_000) }), '#/takenAt');
}
