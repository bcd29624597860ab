import type { Clock } from '@larderbook/messages';
import type { FigureData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { row } from '../page/row';
import { words } from '../page/words';
import type { Plot } from './plot';
import { spread } from './spread';
import { degreeTicks, timeTicks } from './ticks';

export const timeAxisHeight = 26;

export function drawAxes(pen: Pen, plot: Plot, unit: FigureData['unit'], clock: Clock): void {
  const { left, right, bottom, y } = plot;
  for (const degrees of degreeTicks(...y.domain, 8)) {
    pen.rule(left, y(degrees), right, y(degrees), 'hair');
    pen.write(`${degrees} ${unit}`, left - 8, y(degrees) + 2.4, 'label', { align: 'right' });
  }
  pen.rule(left, bottom, right, bottom, 'thin');
  drawTimes(pen, plot, clock);
}

function drawTimes(pen: Pen, { left, right, bottom, x }: Plot, clock: Clock): void {
  let day = '';
  for (const at of timeTicks(...x.domain, (right - left) / 42, clock)) {
    pen.rule(x(at), bottom, x(at), bottom + 3.5, 'thin');
    if (x(at) - left > 14) pen.write(clock.time(at), x(at), bottom + 12, 'label', { align: 'center' });
    if (clock.day(at) !== day && x(at) - left > 14) {
      day = clock.day(at);
      pen.write(day, x(at), bottom + 21, 'day', { align: 'center' });
    }
  }
}

function dots(pen: Pen, left: number, right: number, y: number): void {
  pen.document.save().addContent('[0.6 2.4] 0 d');
  pen.rule(left, y, right, y, 'thin');
  pen.document.restore();
}

/** Names that would collide are moved apart, and a line leads to each. */
export function drawLimits(pen: Pen, { left, right, labels, y }: Plot, limits: FigureData['limits']): void {
  const named = limits.map(({ label }) => ({ ...labels, paragraphs: [words('smallStrong', label)] }));
  const names = named.map((cell) => row(pen, [cell], { above: 0, below: 0 }));
  const places = limits.map(({ value }) => y(value));
  const middles = spread(
    places,
    names.map(({ height }) => height),
  );
  for (const [index, name] of names.entries()) {
    const [place, middle] = [places[index] ?? 0, middles[index] ?? 0];
    pen.rule(left, place, right, place, 'limit');
    for (const edge of limits[index]?.band ?? []) dots(pen, left, right, y(edge));
    if (Math.abs(middle - place) > 0.5) pen.rule(right, place, labels.x - 2, middle, 'thin');
    name.draw(middle - name.height / 2);
  }
}
