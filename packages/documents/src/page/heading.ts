import { bodyColumn, marginColumn, type Area } from './area';
import type { Block } from './block';
import type { Pen } from './pen';
import { row } from './row';
import { toTheRight, words } from './words';

/** The outline of the file lists it too. */
export function heading(pen: Pen, area: Area, text: string, { number = '', aside = '' } = {}): Block {
  const cells = [
    { ...marginColumn(area), paragraphs: [toTheRight(words('number', number))] },
    { ...bodyColumn(area), paragraphs: [words('heading', text, aside && { text: `  ${aside}`, style: 'label' })] },
  ];
  const block = row(pen, cells, { above: 0, below: 3, role: 'H2' });
  return {
    ...block,
    draw(top) {
      pen.document.outline.addItem([number, text].filter(Boolean).join(' '));
      block.draw(top);
    },
  };
}

export function subheading(pen: Pen, area: Area, text: string): Block {
  const cell = { ...bodyColumn(area), paragraphs: [words('subheading', text)] };
  return row(pen, [cell], { above: 4, below: 1, role: 'H3' });
}
