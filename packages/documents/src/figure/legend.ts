import type { FigureData } from '../lot-record-data';
import type { Area } from '../page/area';
import type { Block } from '../page/block';
import type { Pen } from '../page/pen';
import { styles } from '../page/theme';
import { beginLineOf } from './line-patterns';

type Item = { label: string; probe: number; x: number; row: number };

const [sample, afterSample, blank] = [20, 5, 16];
const leading = styles.smallInk.leading + 2;

export function legend(pen: Pen, { body, right }: Area, series: FigureData['series']): Block {
  const items = placed(pen, series, right - body);
  return {
    height: leading * ((items.at(-1)?.row ?? 0) + 1),
    draw(top) {
      for (const { label, probe, x, row } of items) {
        const baseline = top + row * leading + 9;
        const from = body + x;
        beginLineOf(pen.document, probe);
        pen.document
          .moveTo(from, baseline - 2.4)
          .lineTo(from + sample, baseline - 2.4)
          .stroke()
          .restore();
        const name = from + sample + afterSample;
        pen.write(label, name, baseline, 'smallInk', { within: right - name });
      }
    },
  };
}

function placed(pen: Pen, series: FigureData['series'], width: number): Item[] {
  let [x, row] = [0, 0];
  return series.map(({ label }, probe) => {
    const needed = sample + afterSample + pen.width(label, 'smallInk');
    if (x > 0 && x + needed > width) [x, row] = [0, row + 1];
    const item = { label, probe, x, row };
    x += needed + blank;
    return item;
  });
}
