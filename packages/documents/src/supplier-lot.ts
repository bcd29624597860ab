import { facts, remark } from './page/facts';
import { masthead } from './page/masthead';
import { openSheet } from './page/open-sheet';
import type { Sheet } from './page/sheet';
import { words } from './page/words';
import { ledgerNote } from './parts/ledger-note';
import type { SupplierLotData } from './supplier-lot-data';
import { customers, deliveries, lots, packages } from './supplier-lot/where-it-went';
import { tellingOf } from './page/telling';

export function supplierLotSheet(data: SupplierLotData): PDFKit.PDFDocument {
  const { supplierLot, items, suppliers: from, accounted } = data;
  const { say } = tellingOf(data.sheet);
  const sheet = openSheet(data.sheet, { name: say('suppliers-lot'), about: say('lot-from', { lot: supplierLot, items, from }) });
  const { pen, area } = sheet;
  sheet.put(
    masthead(sheet, {
      title: supplierLot,
      subtitle: say('items-from', { items, from }),
      aside: { label: say('accounted-for'), ...accounted },
    }),
    ...facts(pen, area, data.totals),
    ...data.callSuppliers.map(({ name, where, contact }) =>
      remark(pen, area, say('supplier'), words('body', { text: name, style: 'strong' }, say('where-and-call', { where, contact }))),
    ),
    ...(data.alsoUsedBy ? [remark(pen, area, say('same-number'), words('strong', data.alsoUsedBy))] : []),
  );
  deliveries(sheet, data);
  lots(sheet, data);
  packages(sheet, data);
  customers(sheet, data);
  caution(sheet);
  ledgerNote(sheet, data.sheet);
  sheet.end();
  return pen.document;
}

function caution(sheet: Sheet): void {
  sheet.space(12);
  sheet.put(remark(sheet.pen, sheet.area, sheet.say('recall'), words('smallInk', sheet.say('who-decides'))));
}
