import { moistureToProtein } from '../formula/brine';
import type { Ratio } from '../formula/curing-species';
import { isFault, type OrFault } from '../formula/fault';
import { addedWater, analysed, fatAndAddedWater } from '../formula/water-and-fat';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { coded, wordFor } from '../limits/coded';
import { sum, type Sum } from '../limits/line-part';
import { decimalText, scaledBig } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import type { Quantity, QuantityUnit } from '../quantity/quantity';
import type { Calculation } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { ratioOf, judgedBefore, numberOf, publishedFigure } from './published-figure';
import { asGiven } from '../quantity/quantities';

const rows = {
  'cooked sausage': 'water-cooked-sausage',
  'frankfurter or bologna': 'fat-and-water-frankfurter',
  'dry sausage': 'mpr-dry',
  'semi-dry sausage, shelf stable': 'mpr-semi-dry',
  jerky: 'mpr-jerky',
} as const;
type WateredProduct = keyof typeof rows;
export const wateredProducts = Object.keys(rows) as [WateredProduct, ...WateredProduct[]];

/** Percentages as analysed. Fat counts in a frankfurter alone. */
export type WaterInFinishedProduct = { product: WateredProduct; moisture: number; protein: number; fat?: number };

export function waterInFinishedProduct(given: WaterInFinishedProduct): Calculation | CannotCalculate {
  const { product, moisture, protein, fat } = given;
  const isFrankfurter = product === 'frankfurter or bologna';
  if (isFrankfurter && fat === undefined) return cannot('fat-too');
  const inProduct = [['moisture', moisture] as const, ['protein', protein] as const, ...(fat === undefined ? [] : [['fat', fat] as const])];
  const unread = inProduct.map(([, value]) => analysed(value)).find(isFault);
  if (unread) return atFault(unread);
  const limit = publishedFigure(rows[product]);
  const method = methodOf(limit, given);
  if (isFault(method.figure)) return atFault(method.figure);
  const is = ratioOf(method.figure, limit.unit as QuantityUnit);
  const allowed: Quantity = { value: decimalText(method.allowed > 0n ? method.allowed : 0n, 3), unit: '%' };
  return {
    given: [
      { what: coded('product'), is: wordFor('product', product) },
      ...inProduct.map(([name, value]) => ({ what: coded(name), is: asGiven(value, '%') })),
    ],
    steps: [
      { what: coded(method.what), rule: coded(`${method.what}.rule`), putIn: method.putIn, gives: is },
      { what: coded('moisture-allowed'), rule: coded(method.back), putIn: method.backPutIn, gives: allowed },
    ],
    results: [
      { what: coded(method.what), is, value: numberOf(method.figure), unit: limit.unit },
      { what: coded('moisture-allowed-at-protein'), is: allowed },
    ],
    judged: [judgedBefore(method.figure, limit, 'less-water')],
    notes: [
      ...(limit.unit === 'ratio' ? [coded('moisture-to-protein-no-proof')] : []),
      ...(product === 'semi-dry sausage, shelf stable' ? [coded('ratio-with-ph')] : []),
      ...(isFrankfurter ? [coded('fat-alone')] : []),
    ],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}

/** `allowed` in thousandths of a percent, rounded down. */
type Method = { figure: OrFault<Ratio>; allowed: bigint; what: string; putIn: Sum; back: string; backPutIn: Sum };

function methodOf({ unit, max = 0 }: FigureLimit, { product, moisture, protein, fat = 0 }: WaterInFinishedProduct): Method {
  const most = Number(decimalText(max, 3));
  const exact = (value: number) => scaledBig(value, 3) as bigint; // checked above
  if (unit === 'ratio') {
    return {
      figure: moistureToProtein(exact(moisture), exact(protein)),
      allowed: divide(BigInt(max) * exact(protein), 1000n, 'down'),
      what: 'moisture-to-protein',
      putIn: sum`${moisture} ÷ ${protein}`,
      back: 'limit-times-protein',
      backPutIn: sum`${most} × ${protein}`,
    };
  }
  const free = BigInt(max) + 4n * exact(protein);
  return product === 'cooked sausage'
    ? {
        figure: addedWater({ moisture, protein }),
        allowed: free,
        what: 'added-water',
        putIn: sum`${moisture} − 4 × ${protein}`,
        back: 'four-times-protein',
        backPutIn: sum`4 × ${protein} + ${most}`,
      }
    : {
        figure: fatAndAddedWater({ moisture, protein, fat }),
        allowed: free - exact(fat),
        what: 'fat-and-added-water',
        putIn: sum`${fat} + (${moisture} − 4 × ${protein})`,
        back: 'four-times-protein-less-fat',
        backPutIn: sum`4 × ${protein} + ${most} − ${fat}`,
      };
}
