import type { PlanPaperData } from '../plan-paper-data';
import { stack } from '../page/block';
import { remark } from '../page/facts';
import { framed } from '../page/frame';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { signature } from '../parts/signature';

const reference =
  'A set of limits is a reference, not a proof. The plan must be validated for what is really done, ' +
  'with support on file (9 CFR 417.4(a)(1)). Local codes, the inspector and a licensed process authority decide.';

/** Who signed the plan and what they signed, or that nobody did; and which version it took the place of. */
export function adoption(sheet: Sheet, { adopted, written, supersedes, cautions }: PlanPaperData): void {
  const { pen, area, clock } = sheet;
  const title = heading(pen, area, 'Adoption', { aside: '9 CFR 417.2(d)' });
  const told = [
    ...cautions.map((each) => remark(pen, area, 'To know', words('body', each))),
    remark(pen, area, 'Written', words('body', `${written.by}, ${clock.withZone(written.at)}`)),
    remark(
      pen,
      area,
      'Supersedes',
      words(
        'body',
        supersedes
          ? `Version ${supersedes.version}, adopted by ${supersedes.adopted.by}, ${clock.withZone(supersedes.adopted.at)}`
          : 'No earlier version was adopted.',
      ),
    ),
    remark(pen, area, '', words('small', reference)),
  ];
  sheet.space(14);
  if (!adopted) {
    const said = words('strong', 'Not adopted. This version is signed by nobody, and no lot may be made by it.');
    return sheet.put(stack(framed(pen, area, [title, remark(pen, area, '', said), ...told])));
  }
  sheet.hold(title);
  sheet.put(stack([remark(pen, area, 'Adopted', words('body', adopted.statement)), ...signature(sheet, adopted)]), ...told);
}
