import { facts, remark } from './page/facts';
import { masthead } from './page/masthead';
import { openSheet } from './page/open-sheet';
import type { Sheet } from './page/sheet';
import { words } from './page/words';
import { ledgerNote } from './parts/ledger-note';
import type { SupplierLotData } from './supplier-lot-data';
import { customers, deliveries, lots, packages } from './supplier-lot/where-it-went';

const whoDecides =
  'Whether to recall, and how far, is decided with your inspector and the authority; call them first. A package that ' +
  'cannot be told apart from those reached belongs to them.';

/** A supplier's lot, as a PDF: every delivery of the number, the weights and packages in all, and where they went. */
export function supplierLotSheet(data: SupplierLotData): PDFKit.PDFDocument {
  const { supplierLot, items, suppliers: from, accounted } = data;
  const sheet = openSheet(data.sheet, { name: 'Supplier’s lot', about: `Lot ${supplierLot}, ${items}, ${from}` });
  const { pen, area } = sheet;
  sheet.put(
    masthead(sheet, { title: supplierLot, subtitle: `${items}, from ${from}`, aside: { label: 'Accounted for', ...accounted } }),
    ...facts(pen, area, data.totals),
    ...data.callSuppliers.map(({ name, where, contact }) =>
      remark(pen, area, 'Supplier', words('body', { text: name, style: 'strong' }, `, ${where}. Call: ${contact}`)),
    ),
    ...(data.alsoUsedBy ? [remark(pen, area, 'Same number', words('strong', data.alsoUsedBy))] : []),
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
  sheet.put(remark(sheet.pen, sheet.area, 'Recall', words('smallInk', whoDecides)));
}
