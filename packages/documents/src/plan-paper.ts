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
import { tellingOf } from './page/telling';

export function planPaper(data: PlanPaperData): PDFKit.PDFDocument {
  const { title, product, version, stands, because } = data;
  const { say } = tellingOf(data.sheet);
  const versioned = { product, version: String(version) };
  const sheet = openSheet(data.sheet, { name: say('haccp-plan'), about: say('product-version', versioned) });
  const { pen, area } = sheet;
  sheet.put(
    masthead(sheet, { title, subtitle: product, aside: { label: say('version', { version: String(version) }), value: stands, because } }),
    ...facts(pen, area, data.description),
    ...(data.madeOf ? [remark(pen, area, data.madeOf.label, words('body', data.madeOf.value))] : []),
  );
  section(sheet, say('flow-diagram'));
  sheet.put(...flowDiagram(sheet, data.steps));
  hazardAnalysis(sheet, data.steps);
  for (const point of data.controlPoints) planControlPoint(sheet, point);
  if (data.notes) {
    section(sheet, say('notes'));
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
