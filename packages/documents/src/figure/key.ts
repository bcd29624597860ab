import type { FigureData } from '../lot-record-data';
import { gap, type Block } from '../page/block';
import { row } from '../page/row';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';

/** Explains only marks in this figure that no earlier figure of the paper explained. */
export function key({ pen, area: { body, right }, explained, say }: Sheet, data: FigureData): Block {
  const { crossings = [], surroundings = [], limits, arrival } = data;
  const said = [
    ...(crossings.length > 0 ? [say('bracket-means')] : []),
    ...(crossings.some(({ chilled }) => chilled !== undefined) ? [say('cross-means')] : []),
    ...(limits.some(({ band }) => band) ? [say('dotted-means')] : []),
    ...(surroundings.length > 0 ? [say('dots-mean')] : []),
    ...(arrival ? [say('hatched-means', { label: arrival.label, state: arrival.state })] : []),
  ];
  const isNew = said.filter((each) => !explained.has(each));
  if (isNew.length === 0) return gap(0);
  for (const each of isNew) explained.add(each);
  const cell = { x: body, width: right - body, paragraphs: [words('label', isNew.join(' '))] };
  return row(pen, [cell], { above: 2, below: 2 });
}
