import type { ledgerHead as contract, ReplyOf } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { hex } from './sha256';
import { ledgerHead } from './ledger-head';

const latest = 20;

export async function showLedger(tx: Tx): Promise<ReplyOf<typeof contract>> {
  const entries = await tx.ledgerEntry.findMany({ orderBy: { seq: 'desc' }, take: latest + 1 });
  const people = await tx.person.findMany({
    where: { id: { in: entries.map(({ person }) => person) } },
    select: { id: true, name: true },
  });
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return {
    head: await ledgerHead(tx),
    latest: entries.slice(0, latest).map(({ seq, at, person, kind, subject, hash }, place) => ({
      seq: Number(seq),
      at: at.toISOString(),
      ranBack: at < (entries[place + 1]?.at ?? at),
      person: names.get(person) ?? person,
      kind,
      subject,
      hash: hex(hash),
    })),
  };
}
