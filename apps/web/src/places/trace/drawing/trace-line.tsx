import type { Shop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';
import { Weight } from '../../../ui/weight';
import type { PlacedLine } from './place-lines';
import css from './trace-drawing.module.css';

type TraceLineProps = {
  line: PlacedLine;
  /** Share of the heaviest line, 0 to 1. */ thickness: number;
  units: Shop['units'];
};

/** Heavier is thicker. */
export function TraceLine({ line: { link, x1, y1, x2, y2 }, thickness, units }: TraceLineProps) {
  const say = useSay('trace');
  const middle = (x1 + x2) / 2;
  const stroke = 1.25 + 4.75 * thickness;
  return (
    <>
      <path className={css.line} d={`M${x1} ${y1}C${middle} ${y1} ${middle} ${y2} ${x2} ${y2}`} strokeWidth={stroke} />
      <text className={css.weight} x={x2 - 5} y={y2 - stroke / 2 - 4} textAnchor="end">
        <Weight grams={link.grams} units={units} />
      </text>
      {link.count !== undefined && (
        <text className={css.count} x={x2 - 5} y={y2 + stroke / 2 + 13} textAnchor="end">
          {say('count-packages', { count: link.count })}
        </text>
      )}
    </>
  );
}
