import type { Area } from './area';
import type { Block } from './block';
import type { Pen } from './pen';
import { row } from './row';
import { toTheRight, words } from './words';

/** A heading over entries; its number, when it has one, stands in the margin. */
export function heading(pen: Pen, area: Area, text: string, { number = '', aside = '' } = {}): Block {
  const cells = [
    { x: area.left, width: area.margin - area.left - 8, paragraphs: [toTheRight(words('number', number))] },
    { x: area.body, width: area.right - area.body, paragraphs: [words('heading', text, aside && { text: `  ${aside}`, style: 'label' })] },
  ];
  return row(pen, cells, { above: 0, below: 3 });
}

export function subheading(pen: Pen, area: Area, text: string): Block {
  return row(pen, [{ x: area.body, width: area.right - area.body, paragraphs: [words('subheading', text)] }],
    { above: 4, below: 1 });
}
