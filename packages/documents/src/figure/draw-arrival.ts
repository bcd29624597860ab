import type { FigureArrivalData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { inks, lines } from '../page/theme';
import type { Plot } from './plot';

/** Points between the lines of the hatch. */
const apart = 5;

/** Hatched from the earliest to the latest arrival; a ring marks the likeliest. */
export function drawArrival(pen: Pen, plot: Plot, arrival: FigureArrivalData): void {
  const { left, right, top, bottom, x, y } = plot;
  const within = (at: number) => Math.min(Math.max(x(at), left), right);
  const [from, to] = [within(arrival.earliest), arrival.latest === undefined ? right : within(arrival.latest)];
  const { document } = pen;
  document
    .save()
    .rect(from, top, to - from, bottom - top)
    .clip();
  document.lineWidth(lines.hair.width).strokeColor(inks.soft);
  for (let at = from - (bottom - top); at < to; at += apart) document.moveTo(at, bottom).lineTo(at + bottom - top, top);
  document.stroke().restore();
  pen.rule(from, top, from, bottom, 'thin');
  pen.rule(to, top, to, bottom, 'thin');
  const { best } = arrival;
  if (best === undefined || x(best) > right) return;
  document.lineWidth(lines.firm.width).circle(x(best), y(arrival.value), 2.8).fillAndStroke(inks.paper, inks.ink);
}
