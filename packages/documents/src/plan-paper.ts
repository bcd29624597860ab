import type { PlanPaperData } from './plan-paper-data';
import { facts, remark } from './page/facts';
import { heading } from './page/heading';
import { masthead } from './page/masthead';
import { openSheet } from './page/open-sheet';
import type { Sheet } from './page/sheet';
import { words } from './page/words';
import { ledgerNote } from './parts/ledger-note';
import { adoption } from './plan-paper/adoption';
import { flowDiagram } from './plan-paper/flow-diagram';
import { hazardAnalysis } from './plan-paper/hazard-analysis';
import { planControlPoint } from './plan-paper/plan-control-point';

/** One version of a HACCP plan, as a PDF: product, flow, hazards, control points, and who signed it. */
export function planPaper(data: PlanPaperData): PDFKit.PDFDocument {
  const { title, product, version, stands, because } = data;
  const sheet = openSheet(data.sheet, { name: 'HACCP plan', about: `${product}, version ${version}` });
  const { pen, area } = sheet;
  sheet.put(
    masthead(sheet, { title, subtitle: product, aside: { label: `Version ${version}`, value: stands, because } }),
    ...facts(pen, area, data.description),
    ...(data.madeOf ? [remark(pen, area, data.madeOf.label, words('body', data.madeOf.value))] : []),
  );
  section(sheet, 'Flow diagram');
  sheet.put(...flowDiagram(sheet, data.steps));
  hazardAnalysis(sheet, data.steps);
  for (const point of data.controlPoints) planControlPoint(sheet, point);
  if (data.notes) {
    section(sheet, 'Notes');
    sheet.put(remark(pen, area, '', words('body', data.notes)));
  }
  adoption(sheet, data);
  ledgerNote(sheet, data.sheet);
  sheet.end();
  return pen.document;
}

function section(sheet: Sheet, title: string): void {
  sheet.space(10);
  sheet.hold(heading(sheet.pen, sheet.area, title));
}
