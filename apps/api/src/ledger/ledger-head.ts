import type { Tx } from '../platform/database';
import { hex } from './sha256';

/** Undefined before the first write. Every paper prints it, which pins the chain. */
export async function ledgerHead(tx: Tx): Promise<{ seq: number; hash: string } | undefined> {
  const head = await tx.ledgerEntry.findFirst({ orderBy: { seq: 'desc' }, select: { seq: true, hash: true } });
  return head ? { seq: Number(head.seq), hash: hex(head.hash) } : undefined;
}
