import { coded } from '../limits/coded';
import { judgeFigure } from '../kinds/figure/judge-figure';
import { isOfKind } from '../kinds/of-kind';
import { faultOf, isFault, type OrFault } from '../formula/fault';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { Ratio } from '../formula/curing-species';
import {
  accelerators,
  antioxidants,
  binders,
  composition,
  curing,
  drying,
  fermenting,
  leastNitrite,
  phosphates,
  set,
} from '../limit-sets/published/us-inspected-2021.json';
import { readLimit } from '../limit-sets/read-limit';
import { cellOf, rowsOf, type Table } from '../limit-sets/set-file';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { countedShare, isCountable } from '../kinds/concentration/counted-as';
import { mostThousandths } from '../kinds/concentration/dose-for';
import { decimalText } from '../quantity/decimal';
import { divide, type Rounding } from '../quantity/divide';
import type { Quantity, QuantityUnit } from '../quantity/quantity';
import type { JudgedBefore } from './calculation';

const tables: readonly Table[] = [curing, accelerators, phosphates, leastNitrite, composition, binders, antioxidants, fermenting, drying];

/** By the id of the row: composition, curing and drying in inspected establishments. */
const figures = new Map<string, FigureLimit>(
  tables.flatMap(rowsOf).flatMap((cells) => {
    const limit = readLimit(cells, set);
    const figure = isOfKind(limit, 'concentration') ? figureOfIngoing(limit) : limit;
    return isOfKind(figure, 'figure') ? [[cellOf(cells, 'id'), figure]] : [];
  }),
);

/** Throws a RangeError where no row has the id: a slip in the code. */
export function publishedFigure(id: string): FigureLimit {
  const figure = figures.get(id);
  if (!figure) throw new RangeError(`No published figure is called ${id}`);
  return figure;
}

/** In ppm of the substance weighed; one counted as an ion is converted at its use. */
export function figureOfIngoing(limit: ConcentrationLimit): FigureLimit {
  const { substance, min, countedAs, source } = limit;
  const most = mostThousandths(limit);
  return {
    kind: 'figure',
    of: countedAs ? `${substance}, counted as ${countedAs}` : substance,
    unit: 'ppm',
    ...(min === undefined ? {} : { min: min * 10 }),
    ...(most === undefined ? {} : { max: Number(most) }),
    source,
  };
}

export function countedBy(limit: ConcentrationLimit, { numerator, denominator }: Ratio): OrFault<Ratio> {
  if (!isCountable(limit)) return faultOf('no-ion-to-count', { ion: limit.countedAs as string });
  const share = countedShare(limit);
  return { numerator: numerator * share.numerator, denominator: denominator * share.denominator };
}

/** Before weighing there is no lot to hold. */
export function judgedBefore(figure: OrFault<Ratio>, limit: FigureLimit, then: string): JudgedBefore {
  const verdict = judgeFigure(isFault(figure) ? undefined : figure, limit);
  return { verdict: verdict.kind === 'missed' ? { ...verdict, then: coded(then) } : verdict, limit };
}

/** Rounded once for reading: 162.274 ppm, 1.9. */
export const ratioOf = ({ numerator, denominator }: Ratio, unit: QuantityUnit, rounding: Rounding = 'nearest', decimals = 3): Quantity => ({
  value: decimalText(divide(numerator * 10n ** BigInt(decimals), denominator, rounding), decimals),
  unit,
});

export const ingoingOf = (ratio: Ratio, rounding: Rounding = 'nearest'): Quantity => ratioOf(ratio, 'ppm', rounding, 2);

export const numberOf = ({ numerator, denominator }: Ratio): number => Number(divide(numerator * 1000n, denominator, 'nearest')) / 1000;
