import type { FigureStageData } from '../lot-record-data';
import type { Block } from '../page/block';
import type { Pen } from '../page/pen';
import { row } from '../page/row';
import { inks, lines } from '../page/theme';
import { given, words } from '../page/words';
import { labelsAt, type Plot } from './plot';
import type { Sheet } from '../page/sheet';

const bar = 6;

/** The frame is the time allowed, the filling the time taken. */
export type StageBand = { height: number; draw(plot: Plot, top: number): void };

export function stageBand(sheet: Pick<Sheet, 'pen' | 'area' | 'say'>, stage: FigureStageData): StageBand {
  const { pen } = sheet;
  const name = nameOf(sheet, stage);
  const height = Math.max(name.height + 4, 16);
  return {
    height,
    draw(plot, top) {
      name.draw(top + 2);
      drawBand(pen, plot, stage, top + 2 + Math.min(name.height, 20) / 2);
    },
  };
}

function nameOf({ pen, area, say }: Pick<Sheet, 'pen' | 'area' | 'say'>, { label, spent, missed }: FigureStageData): Block {
  const paragraphs = given(words('smallStrong', missed ? say('stage-missed', { stage: label }) : label), spent && words('label', spent));
  return row(pen, [{ ...labelsAt(area), paragraphs }], { above: 0, below: 0 });
}

function drawBand(pen: Pen, plot: Plot, stage: FigureStageData, middle: number): void {
  const { left, right, x, newest } = plot;
  const within = (at: number) => Math.min(Math.max(x(at), left), right);
  const [from, to] = [within(stage.from), within(stage.to ?? newest)];
  const allowed = stage.deadline === undefined ? to : within(stage.deadline);
  pen.rule(left, middle, right, middle, 'hair');
  guide(pen, from, plot);
  if (stage.to !== undefined) guide(pen, to, plot);

  const top = middle - bar / 2;
  pen.fill(from, top, Math.max(allowed - from, 0), bar, 'paper');
  pen.fill(from, top, Math.max(Math.min(to, allowed) - from, 0.6), bar, 'accent');
  if (to > allowed) beyond(pen, allowed, to, top);
  outline(pen, from, allowed, top, stage.deadline !== undefined && x(stage.deadline) > right);
}

function guide(pen: Pen, x: number, { top, bottom }: Plot): void {
  pen.document.save().addContent('[0.6 2.4] 0 d');
  pen.rule(x, top, x, bottom, 'thin');
  pen.document.restore();
}

/** Time beyond what was allowed is hatched, under a heavy line. */
function beyond({ document }: Pen, from: number, to: number, top: number): void {
  const bottom = top + bar;
  document
    .save()
    .rect(from, top, to - from, bar)
    .clip()
    .lineWidth(0.7)
    .strokeColor(inks.ink);
  document.rect(from, top, to - from, bar).fill(inks.paper);
  for (let x = from - bar; x < to; x += 2.6)
    document
      .moveTo(x, bottom)
      .lineTo(x + bar, top)
      .stroke();
  document
    .restore()
    .lineWidth(lines.firm.width)
    .strokeColor(inks.ink)
    .rect(from, top, to - from, bar)
    .stroke();
}

/** The right side stays open when the deadline lies beyond the figure. */
function outline(pen: Pen, from: number, to: number, top: number, isOpen: boolean): void {
  const bottom = top + bar;
  pen.rule(from, top, to, top, 'thin');
  pen.rule(from, bottom, to, bottom, 'thin');
  pen.rule(from, top, from, bottom, 'thin');
  if (!isOpen) pen.rule(to, top - 2.5, to, bottom + 2.5, 'firm');
}
