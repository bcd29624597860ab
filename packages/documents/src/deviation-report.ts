import type { DeviationReportData } from './deviation-report-data';
import { remark } from './page/facts';
import { masthead } from './page/masthead';
import { openSheet } from './page/open-sheet';
import { words } from './page/words';
import { deviationFrame } from './parts/deviation-frame';
import { ledgerNote } from './parts/ledger-note';
import { readingList } from './parts/reading-list';
import { legendOfMarks } from './parts/verdict-words';
import { tellingOf } from './page/telling';

export function deviationReport(data: DeviationReportData): PDFKit.PDFDocument {
  const { lot, hazard, preparedAction, deviation, readings } = data;
  const kind = lot.kind ?? 'lot';
  const named = { code: lot.code, product: lot.product };
  const { say } = tellingOf(data.sheet);
  const isLot = kind === 'lot';
  const about = say(isLot ? 'deviation-of-lot' : 'deviation-of-delivery', { number: deviation.number, ...named });
  const sheet = openSheet(data.sheet, { name: say('deviation-report'), about });
  const { pen, area, clock } = sheet;
  sheet.put(
    masthead(sheet, {
      title: deviation.number,
      subtitle: say(isLot ? 'lot-and-product' : 'delivery-and-product', named),
      aside: deviation.closed
        ? { label: say('where-it-stands'), value: say('is-closed'), because: clock.dayAndTime(deviation.closed.at) }
        : { label: say('where-it-stands'), value: say('is-open'), because: say(isLot ? 'lot-on-hold' : 'delivery-on-hold') },
    }),
    remark(pen, area, say('hazard'), words('body', hazard)),
    remark(pen, area, say('prepared'), words('body', preparedAction ?? say('nothing-prepared'))),
  );
  sheet.space(6);
  sheet.putTogether(deviationFrame(sheet, deviation));
  if (readings.length) {
    sheet.space(8);
    readingList(sheet, readings, [deviation]);
    sheet.put(remark(pen, area, '', legendOfMarks(say)));
  }
  ledgerNote(sheet, data.sheet);
  sheet.end();
  return pen.document;
}
