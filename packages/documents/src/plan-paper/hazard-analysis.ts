import type { PlanHazardData, PlanStepData } from '../plan-paper-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import { words } from '../page/words';

/** Every hazard of every step, whether it is reasonably likely to occur, why, and what is done: 9 CFR 417.2(a). */
export function hazardAnalysis(sheet: Sheet, steps: PlanStepData[]): void {
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, 'Hazard analysis', { aside: '9 CFR 417.2(a)' }));
  const table = new Table(sheet, [
    { head: 'Step and hazard', share: 1.2 },
    { head: 'Likely to occur', width: 34 },
    { head: 'Because', share: 1.3 },
    { head: 'Controlled by', share: 1 },
  ]);
  for (const [index, step] of steps.entries()) for (const entry of entriesOf(step, index + 1)) table.add(entry);
  table.end();
}

/** The step stands over its first hazard, so that neither is left alone on a page. */
function entriesOf({ name, points, hazards }: PlanStepData, number: number): Entry[] {
  const at = points.map((point) => point.number).join(', ');
  const step = words('strong', name, at && { text: `  ${at}`, style: 'label' });
  if (!hazards.length) return [{ label: String(number), cells: [[step, words('slanted', 'No hazard is named.')]] }];
  return hazards.map((hazard, index) => {
    const [what = [], ...others] = cellsOf(hazard);
    return { label: index === 0 ? String(number) : '', cells: [index === 0 ? [step, ...what] : what, ...others] };
  });
}

const cellsOf = ({ kind, what, likely, because, control }: PlanHazardData) => [
  [words('body', what, { text: `  ${kind}`, style: 'label' })],
  [likely ? words('strong', 'yes') : words('body', 'no')],
  [words('smallInk', because || '–')],
  [words('smallInk', control || '–')],
];
