import { logFoot } from './monitoring-log/log-foot';
import { logHead, periodInWords } from './monitoring-log/log-head';
import { logColumns, rowEntry } from './monitoring-log/row-entry';
import { Tally } from './monitoring-log/tally';
import type { MonitoringLogData } from './monitoring-log-data';
import { openSheet } from './page/open-sheet';
import { Pace } from './page/pace';
import type { Sheet } from './page/sheet';
import { Table } from './page/table';
import { tellingOf } from './page/telling';
import { Footnotes } from './parts/footnotes';

/** The PDF is drawn page by page while the rows are read once. A row that fails destroys the stream with its error. */
export function monitoringLog(data: MonitoringLogData): PDFKit.PDFDocument {
  const { controlPoint, period, product } = data;
  const name = [controlPoint.number, controlPoint.name].filter(Boolean).join(' ');
  const telling = tellingOf(data.sheet);
  const about = `${name}, ${product}, ${periodInWords(period, telling)}`;
  const sheet = openSheet(data.sheet, { name: telling.say('monitoring-log'), about }, { turned: 'landscape', isTagged: false });
  const { document } = sheet.pen;
  draw(sheet, data).catch((reason: unknown) => {
    document.destroy(reason instanceof Error ? reason : new Error(String(reason)));
  });
  return document;
}

async function draw(sheet: Sheet, data: MonitoringLogData): Promise<void> {
  logHead(sheet, data);
  sheet.space(6);
  const tally = new Tally();
  const footnotes = new Footnotes();
  if (!(await drawRows(sheet, data, tally, footnotes))) return;
  sheet.put(...footnotes.legend(sheet));
  logFoot(sheet, data, tally);
  sheet.end();
}

/** False when the reader went away before the last row. */
async function drawRows(sheet: Sheet, { rows, controlPoint }: MonitoringLogData, tally: Tally, footnotes: Footnotes): Promise<boolean> {
  const limit = controlPoint.limits.map(({ printed }) => printed).join('; ');
  const table = new Table(sheet, logColumns(sheet.say));
  const pace = new Pace(sheet.pen.document);
  let pages = sheet.pages;
  for await (const row of rows) {
    table.add(rowEntry(row, { limit, telling: sheet, footnotes }));
    tally.add(row);
    if (sheet.pages === pages) continue;
    pages = sheet.pages;
    if (!(await pace.keep())) return false;
  }
  table.end();
  return true;
}
