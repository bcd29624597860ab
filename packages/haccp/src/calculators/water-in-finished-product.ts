import { moistureToProtein } from '../formula/brine';
import type { Ratio } from '../formula/curing-species';
import { isFault, type Worked } from '../formula/fault';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { addedWater, analysed, fatAndAddedWater } from '../formula/water-and-fat';
import { decimalText, scaledBig } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import { cautions } from './cautions';
import { judgedBefore, numberOf, publishedFigure, sayRatio } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

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

/** How much moisture a product may hold by its protein, and how its analysis stands to it. */
export function waterInFinishedProduct(given: WaterInFinishedProduct): Calculation | CannotCalculate {
  const { product, moisture, protein, fat } = given;
  const isFrankfurter = product === 'frankfurter or bologna';
  if (isFrankfurter && fat === undefined) return { cannot: 'Fat and added water are held together here: give the fat too.' };
  const inProduct: [string, number][] = [
    ['Moisture', moisture],
    ['Protein', protein],
    ...(fat === undefined ? [] : [['Fat', fat] as [string, number]]),
  ];
  const unread = inProduct.map(([, value]) => analysed(value)).find(isFault);
  if (unread) return { cannot: unread.fault };
  const limit = publishedFigure(rows[product]);
  const method = methodOf(limit, given);
  if (isFault(method.figure)) return { cannot: method.figure.fault };
  const said = sayRatio(method.figure, limit.unit);
  const allowed = `${decimalText(method.allowed > 0n ? method.allowed : 0n, 3)} %`;
  return {
    title: 'Water in a finished product',
    given: [{ what: 'Product', said: product }, ...inProduct.map(([what, value]) => ({ what, said: `${value} %` }))],
    steps: [
      { what: method.what, rule: method.rule, putIn: method.putIn, gives: said },
      { what: 'Moisture allowed', rule: method.back, putIn: method.backPutIn, gives: allowed },
    ],
    results: [
      { what: method.what, said, value: numberOf(method.figure), unit: limit.unit },
      { what: 'Moisture allowed at this protein', said: allowed },
    ],
    verdicts: [judgedBefore(method.figure, limit, 'Take less water, or dry it further, and analyse again before it is labelled so.')],
    notes: [
      ...(limit.unit === 'ratio' ? ['Moisture to protein is a standard of labelling and no proof of safety.'] : []),
      ...(product === 'semi-dry sausage, shelf stable' ? ['The ratio counts together with a pH of 5.0 or below.'] : []),
      ...(isFrankfurter ? ['Fat alone may be 30 % at most.'] : []),
    ],
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}

/** `allowed` in thousandths of a percent, rounded down. */
type Method = {
  figure: Worked<Ratio>;
  allowed: bigint;
  what: string;
  rule: string;
  putIn: string;
  back: string;
  backPutIn: string;
};

function methodOf({ unit, max = 0 }: FigureLimit, { product, moisture, protein, fat = 0 }: WaterInFinishedProduct): Method {
  const most = decimalText(max, 3);
  const exact = (value: number) => scaledBig(value, 3) as bigint; // read before as an analysis
  if (unit === 'ratio') {
    return {
      figure: moistureToProtein(exact(moisture), exact(protein)),
      allowed: divide(BigInt(max) * exact(protein), 1000n, 'down'),
      what: 'Moisture to protein',
      rule: 'moisture ÷ protein',
      putIn: `${moisture} ÷ ${protein}`,
      back: 'limit × protein',
      backPutIn: `${most} × ${protein}`,
    };
  }
  const added = { rule: 'moisture − 4 × protein', putIn: `${moisture} − 4 × ${protein}` };
  const free = BigInt(max) + 4n * exact(protein);
  return product === 'cooked sausage'
    ? {
        figure: addedWater({ moisture, protein }),
        allowed: free,
        what: 'Added water',
        ...added,
        back: '4 × protein + limit',
        backPutIn: `4 × ${protein} + ${most}`,
      }
    : {
        figure: fatAndAddedWater({ moisture, protein, fat }),
        allowed: free - exact(fat),
        what: 'Fat and added water',
        rule: `fat + ${added.rule}, never below nothing`,
        putIn: `${fat} + (${added.putIn})`,
        back: '4 × protein + limit − fat',
        backPutIn: `4 × ${protein} + ${most} − ${fat}`,
      };
}
