import type { ledgerHead as contract, ReplyOf } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { ledgerHead } from './ledger-head';

const latest = 20;

export async function showLedger(tx: Tx): Promise<ReplyOf<typeof contract>> {
  const entries = await tx.ledgerEntry.findMany({ orderBy: { seq: 'desc' }, take: latest });
  const people = await tx.person.findMany({
    where: { id: { in: entries.map(({ person }) => person) } },
    select: { id: true, name: true },
  });
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return {
    head: await ledgerHead(tx),
    latest: entries.map(({ seq, at, person, kind, subject, hash }) => ({
      seq: Number(seq),
      at: at.toISOString(),
      person: names.get(person) ?? person,
      kind,
      subject,
      hash,
    })),
  };
}
