import type { Block } from './block';
import { factColumns } from './facts';
import { row } from './row';
import type { Sheet } from './sheet';
import { given, words } from './words';

/** The aside is the one thing to know first. */
export type Masthead = { title: string; subtitle: string; aside: { label: string; value: string; because?: string } };

export function masthead({ pen, area }: Sheet, { title, subtitle, aside }: Masthead): Block {
  const [left, , right] = factColumns(area);
  const width = right.x - left.x - 14;
  const style = pen.width(title, 'title') > width ? 'longTitle' : 'title';
  return row(
    pen,
    [
      { x: left.x, width, paragraphs: [words(style, title), words('product', subtitle)] },
      {
        ...right,
        paragraphs: given(
          words('label', aside.label),
          words('heading', capital(aside.value)),
          aside.because && words('smallInk', aside.because),
        ),
      },
    ],
    { above: 2, below: 8, role: 'H1' },
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
