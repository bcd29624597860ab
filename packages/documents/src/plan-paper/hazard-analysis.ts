import type { PlanHazardData, PlanStepData } from '../plan-paper-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import { words } from '../page/words';
import type { SayOnPaper } from '../page/telling';

/** 9 CFR 417.2(a). */
export function hazardAnalysis(sheet: Sheet, steps: PlanStepData[]): void {
  const { say } = sheet;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, say('hazard-analysis'), { aside: '9 CFR 417.2(a)' }));
  const table = new Table(sheet, [
    { head: say('step-and-hazard'), share: 1.2 },
    { head: say('likely-to-occur'), width: 34 },
    { head: say('because'), share: 1.3 },
    { head: say('controlled-by'), share: 1 },
  ]);
  for (const [index, step] of steps.entries()) for (const entry of entriesOf(step, index + 1, say)) table.add(entry);
  table.end();
}

/** A step stands with its first hazard, so that neither is alone on a page. */
function entriesOf({ name, points, hazards }: PlanStepData, number: number, say: SayOnPaper): Entry[] {
  const at = points.map((point) => point.number).join(', ');
  const step = words('strong', name, at && { text: `  ${at}`, style: 'label' });
  if (!hazards.length) return [{ label: String(number), cells: [[step, words('slanted', say('no-hazard-named'))]] }];
  return hazards.map((hazard, index) => {
    const [what = [], ...others] = cellsOf(hazard, say);
    return { label: index === 0 ? String(number) : '', cells: [index === 0 ? [step, ...what] : what, ...others] };
  });
}

const cellsOf = ({ kind, what, likely, because, control }: PlanHazardData, say: SayOnPaper) => [
  [words('body', what, { text: `  ${kind}`, style: 'label' })],
  [likely ? words('strong', say('yes')) : words('body', say('no'))],
  [words('smallInk', because || '–')],
  [words('smallInk', control || '–')],
];
