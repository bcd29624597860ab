import type { FigureData } from '../lot-record-data';
import type { Area } from '../page/area';
import { gap, type Block } from '../page/block';
import type { Pen } from '../page/pen';
import { row } from '../page/row';
import { words } from '../page/words';

/** What the marks of a figure mean: only those that are in it. */
export function key(pen: Pen, { body, right }: Area, data: FigureData): Block {
  const { crossings = [], surroundings = [], limits, arrival } = data;
  const said = [
    ...(crossings.length > 0
      ? ['A bracket on a limit spans the two readings between which it was passed; its diamond, where a line does.']
      : []),
    ...(crossings.some(({ chilled }) => chilled !== undefined) ? ['A cross: passed as a core cools.'] : []),
    ...(limits.some(({ band }) => band) ? ['Dotted about a limit: what the thermometer may be wrong by.'] : []),
    ...(surroundings.length > 0 ? ['Fine dots: what the product lies in.'] : []),
    ...(arrival ? [`Hatched: ${arrival.label} expected, ${arrival.state}; advice, never acceptance.`] : []),
  ];
  if (said.length === 0) return gap(0);
  const cell = { x: body, width: right - body, paragraphs: [words('label', said.join(' '))] };
  return row(pen, [cell], { above: 2, below: 2 });
}
