import type { MonitoringLogData } from '../monitoring-log-data';
import { stack, type Block } from '../page/block';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { ledgerNote } from '../parts/ledger-note';
import { legendOfMarks } from '../parts/verdict-words';
import type { Tally } from './tally';

/** Points of the reviews' heading and the ledger note, so that neither stands alone on a page. */
const forReview = 90;
const aLine = 12;

export function logFoot(sheet: Sheet, { reviews, sheet: of }: MonitoringLogData, tally: Tally): void {
  const { pen, area, say } = sheet;
  const initials = tally.initials();
  sheet.space(8);
  sheet.put(
    stack([
      remark(
        pen,
        area,
        say('in-all'),
        words(
          'strong',
          tally.inWords(say),
          initials && { text: `     ${say('initials')}  `, style: 'columnHead' },
          initials && { text: initials, style: 'body' },
        ),
      ),
      remark(pen, area, '', legendOfMarks(say)),
    ]),
  );
  sheet.space(8);
  sheet.reserve(forReview + reviews.length * aLine);
  sheet.hold(heading(pen, area, say('review-of-this-log')));
  sheet.put(reviews.length ? reviewed(sheet, reviews) : signatureLine(sheet));
  ledgerNote(sheet, of);
}

const reviewed = ({ pen, area, clock, say }: Sheet, reviews: MonitoringLogData['reviews']): Block =>
  remark(
    pen,
    area,
    say('reviewed'),
    ...reviews.map(({ text, by, at }) => words('body', text, { text: `   ${by}, ${clock.dayAndTimeWithZone(at)}`, style: 'smallInk' })),
  );

/** The line is for a review made on paper. */
function signatureLine({ pen, area, say }: Sheet): Block {
  const [signed, dated] = [area.body + 240, area.body + 400];
  const line: Block = {
    height: 40,
    draw(top) {
      pen.rule(area.body, top + 26, signed - 16, top + 26, 'thin');
      pen.rule(signed, top + 26, dated, top + 26, 'thin');
      pen.write(say('reviewer'), area.body, top + 36, 'label');
      pen.write(say('date-and-time'), signed, top + 36, 'label');
    },
  };
  return stack([remark(pen, area, '', words('strong', say('no-review'))), line]);
}
