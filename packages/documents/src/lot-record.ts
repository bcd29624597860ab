import type { LotRecordData } from './lot-record-data';
import { heading } from './page/heading';
import { openSheet } from './page/open-sheet';
import type { Sheet } from './page/sheet';
import { atAGlance } from './lot-record/at-a-glance';
import { controlPoints } from './lot-record/control-points';
import { corrections } from './lot-record/corrections';
import { inputs } from './lot-record/inputs';
import { instruments } from './lot-record/instruments';
import { ledgerNote } from './parts/ledger-note';
import { lotHead } from './lot-record/lot-head';
import { packing } from './lot-record/packing';
import { review } from './lot-record/review';
import { weighings } from './lot-record/weighings';
import { deviationFrame } from './parts/deviation-frame';
import { tellingOf } from './page/telling';

export function lotRecord(data: LotRecordData): PDFKit.PDFDocument {
  const { say } = tellingOf(data.sheet);
  const sheet = openSheet(data.sheet, {
    name: say('lot-record'),
    about: say('lot-and-product', { code: data.lot.code, product: data.lot.product }),
  });
  lotHead(sheet, data);
  atAGlance(sheet, data);
  inputs(sheet, data);
  weighings(sheet, data);
  controlPoints(sheet, data);
  deviations(sheet, data);
  packing(sheet, data);
  corrections(sheet, data);
  instruments(sheet, data.instruments);
  review(sheet, data);
  ledgerNote(sheet, data.sheet);
  sheet.end();
  return sheet.pen.document;
}

function deviations(sheet: Sheet, { deviations: all }: LotRecordData): void {
  if (!all.length) return;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, sheet.say('deviations-and-actions'), { aside: '9 CFR 417.3' }));
  for (const deviation of all) {
    sheet.putTogether(deviationFrame(sheet, deviation));
    sheet.space(10);
  }
}
