import type { DeviationReportData } from './deviation-report-data';
import { remark } from './page/facts';
import { masthead } from './page/masthead';
import { openSheet } from './page/open-sheet';
import { words } from './page/words';
import { deviationFrame } from './parts/deviation-frame';
import { readingList } from './parts/reading-list';

/** One deviation on a sheet of its own, as a PDF: the parts of its form, disposition, closing, readings. */
export function deviationReport(data: DeviationReportData): PDFKit.PDFDocument {
  const { lot, hazard, preparedAction, deviation, readings } = data;
  const kind = lot.kind ?? 'lot';
  const about = `Deviation ${deviation.number}, ${kind} ${lot.code}, ${lot.product}`;
  const sheet = openSheet(data.sheet, { name: 'Deviation report', about });
  const { pen, area, clock } = sheet;
  sheet.put(
    masthead(sheet, {
      title: deviation.number,
      subtitle: `${kind === 'lot' ? 'Lot' : 'Delivery'} ${lot.code}, ${lot.product}`,
      aside: deviation.closed
        ? { label: 'Where it stands', value: 'Closed', because: clock.dayAndTime(deviation.closed.at) }
        : { label: 'Where it stands', value: 'Open', because: `The ${kind} is on hold.` },
    }),
    remark(pen, area, 'Hazard', words('body', hazard)),
    remark(pen, area, 'Prepared', words('body', preparedAction ?? 'The plan has no prepared action for this case.')),
  );
  sheet.space(6);
  sheet.putTogether(deviationFrame(sheet, deviation));
  if (readings.length) {
    sheet.space(8);
    readingList(sheet, readings, [deviation]);
  }
  sheet.end();
  return pen.document;
}
