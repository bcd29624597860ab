import type { SheetData } from '@larderbook/documents';
import { ledgerHead } from '../ledger/ledger-head';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';

/** What stands on every sheet: the shop, the paper, who prints it now, and the newest line of the ledger. */
export async function sheetOf(tx: Tx, { name: by, establishment, voice }: Person, now: Date): Promise<SheetData> {
  const { name, number, address, timeZone, paper } = establishment;
  const head = await ledgerHead(tx);
  return {
    establishment: {
      name,
      number: bareNumber(number) || undefined,
      address: address.split(/\s*\n\s*/).join(', '),
      timeZone,
    },
    paper,
    language: voice.language,
    printed: { by, at: now.getTime() },
    ledgerHead: head && { sequence: head.seq, hash: head.hash },
  };
}

/** The paper says "Est." before it. */
export const bareNumber = (number: string): string => number.replace(/^est\b\.?\s*/i, '');
