import type { SheetData } from '../sheet-data';
import { remark } from '../page/facts';
import { inGroups } from '../page/head-and-foot';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';

/** Whoever keeps this paper can prove by the hash that nothing before it changed. */
export function ledgerNote(sheet: Sheet, { ledgerHead }: SheetData): void {
  if (!ledgerHead) return;
  sheet.space(14);
  sheet.put(
    remark(
      sheet.pen,
      sheet.area,
      sheet.say('ledger', { sequence: String(ledgerHead.sequence) }),
      words('body', inGroups(ledgerHead.hash)),
      words('small', sheet.say('ledger-chain')),
    ),
  );
}
