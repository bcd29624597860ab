import type { LotRecordData, ReviewData } from '../lot-record-data';
import { stack, type Block } from '../page/block';
import { remark } from '../page/facts';
import { framed } from '../page/frame';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { signature } from '../parts/signature';

export function review(sheet: Sheet, { reviews, outstanding }: LotRecordData): void {
  const { pen, area, say } = sheet;
  const title = heading(pen, area, say('pre-shipment-review'), { aside: '9 CFR 417.5(c)' });
  const open = outstanding.map((each) => remark(pen, area, say('outstanding'), words('body', each)));
  sheet.space(14);
  if (!reviews.length) {
    return sheet.put(stack(framed(pen, area, [title, remark(pen, area, '', words('strong', say('not-reviewed'))), ...open])));
  }
  sheet.hold(title);
  sheet.put(...reviews.map((each) => signed(sheet, each)), ...open);
}

function signed(sheet: Sheet, review: ReviewData): Block {
  const { pen, area, say } = sheet;
  const { cleared, statement, soleWorker: isSole, findings, takenBack } = review;
  return stack([
    remark(pen, area, say(cleared ? 'cleared' : 'not-cleared'), words('body', { text: statement, strike: takenBack !== undefined })),
    ...(takenBack ? [remark(pen, area, say('review-taken-back'), words('strong', takenBack))] : []),
    ...(findings ?? []).map(({ heading: label, said }) => remark(pen, area, label, ...said.map((each) => words('body', each)))),
    ...signature(sheet, review, { note: isSole ? say('sole-worker') : '', strike: takenBack !== undefined }),
  ]);
}
