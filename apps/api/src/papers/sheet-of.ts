import type { SheetData } from '@larderbook/documents';
import { ledgerHead } from '../ledger/ledger-head';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';

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

/** The paper itself prints "Est." before the number. */
export const bareNumber = (number: string): string => number.replace(/^est\b\.?\s*/i, '');
