import type { Tx } from '../platform/database';

/** The newest line of the chain; undefined before the first write. Printed on every paper, which pins the chain. */
export async function ledgerHead(tx: Tx): Promise<{ seq: number; hash: string } | undefined> {
  const head = await tx.ledgerEntry.findFirst({ orderBy: { seq: 'desc' }, select: { seq: true, hash: true } });
  return head ? { seq: Number(head.seq), hash: head.hash } : undefined;
}
