import { judgeFigure } from './judge-figure';
import type { FigureLimit } from './figure-limit';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { notedError } from '../../instruments/noted-error';
import { scaledBig } from '../../quantity/decimal';
import type { Plain } from '../../limits/measurement';
import type { Verdict } from '../../limits/verdict';
import { worstVerdict } from '../../limits/worst-verdict';

type Read = { value: number; unit: string };

/** In another unit it decides nothing. The bounds allow for the meter's error. */
export function judgeFigureRead(read: Read | undefined, limit: FigureLimit, errors: InstrumentErrors = {}): Verdict {
  const thousandths = read?.unit === limit.unit ? scaledBig(read.value, 3) : undefined;
  const figure = thousandths === undefined ? undefined : { numerator: thousandths, denominator: 1000n };
  const { unit } = limit;
  const error = unit === 'pH' || unit === 'aw' ? errors[unit] : undefined;
  if (!error || error.thousandths === 0) return judgeFigure(figure, limit);
  const verdict = worstVerdict(boundsAllowing(limit, error).map((one) => judgeFigure(figure, one)));
  return { ...verdict, notes: [...verdict.notes, notedError(error, unit as 'pH' | 'aw')] };
}

/** One by one: an error wider than the range leaves nothing that is met. */
function boundsAllowing({ min, max, ...limit }: FigureLimit, { thousandths }: Plain): FigureLimit[] {
  const by = Math.abs(thousandths);
  const least = min === undefined ? [] : [{ ...limit, min: min + by }];
  const most = max === undefined ? [] : [{ ...limit, max: max - by }];
  return least.length + most.length > 0 ? [...least, ...most] : [limit];
}
