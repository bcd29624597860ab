import type { PlanPaperData } from '../plan-paper-data';
import { stack } from '../page/block';
import { remark } from '../page/facts';
import { framed } from '../page/frame';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { signature } from '../parts/signature';

export function adoption(sheet: Sheet, { adopted, written, supersedes, cautions }: PlanPaperData): void {
  const { pen, area, clock, say } = sheet;
  const title = heading(pen, area, say('adoption'), { aside: '9 CFR 417.2(d)' });
  const told = [
    ...cautions.map((each) => remark(pen, area, say('to-know'), words('body', each))),
    remark(pen, area, say('written'), words('body', `${written.by}, ${clock.dayAndTimeWithZone(written.at)}`)),
    remark(
      pen,
      area,
      say('supersedes'),
      words(
        'body',
        supersedes
          ? say('version-adopted-by', {
              version: String(supersedes.version),
              who: supersedes.adopted.by,
              at: clock.dayAndTimeWithZone(supersedes.adopted.at),
            })
          : say('no-earlier-version'),
      ),
    ),
    remark(pen, area, '', words('small', say('set-is-a-reference'))),
  ];
  sheet.space(14);
  if (!adopted) {
    const said = words('strong', say('not-adopted'));
    return sheet.put(stack(framed(pen, area, [title, remark(pen, area, '', said), ...told])));
  }
  sheet.hold(title);
  sheet.put(stack([remark(pen, area, say('adopted'), words('body', adopted.statement)), ...signature(sheet, adopted)]), ...told);
}
