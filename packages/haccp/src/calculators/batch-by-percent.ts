import { batchOf, type Batch, type Wanted } from '../formula/batch-of';
import { isFault } from '../formula/fault';
import type { FormulaLine } from '../formula/formula';
import { coded } from '../limits/coded';
import { joined, sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import type { Quantity } from '../quantity/quantity';
import { massOf, roundedMass } from '../quantity/weigh';
import type { Calculation, Fact, Step } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, percent, typed } from './figures';

/** `yieldPercent` is packed weight on the meat block or on everything that goes in. */
export type PackagesWanted = {
  packages: number;
  net: EnteredMass;
  yieldPercent: number;
  yieldOn: 'meat block' | 'everything';
};

export type BatchByPercent = { lines: readonly FormulaLine[]; from: { trimmedMeat: EnteredMass } | PackagesWanted };

export function batchByPercent({ lines, from }: BatchByPercent): Calculation | CannotCalculate {
  const batch = batchOf(lines, wantedOf(from));
  if (isFault(batch)) return atFault(batch);
  const unit = 'trimmedMeat' in from ? from.trimmedMeat.unit : from.net.unit;
  const meat = roundedMass(batch.meat, unit, 3, 'up');
  return {
    given: [
      ...givenOf(from),
      ...lines.map((line) => ({ what: line.name, is: coded('percent-on-meat', { percent: percent(line.percent) }) })),
    ],
    steps: [
      ...('trimmedMeat' in from ? [] : [backFrom(from, lines, meat)]),
      ...batch.lines.map(
        (line): Step => ({
          what: line.name,
          rule: coded('meat-times-percent'),
          putIn: sum`${meat} × ${percent(line.percent)}`,
          gives: grams(line.target),
        }),
      ),
    ],
    results: resultsOf(batch, meat, unit),
    judged: [],
    notes: [coded('batch-not-judged'), coded('batch-trimmed-and-yield')],
    sources: [],
    grounds: [coded('arithmetic')],
    cautions: [cautions.curing],
  };
}

const wantedOf = (from: BatchByPercent['from']): Wanted => {
  if ('trimmedMeat' in from) return { trimmedMeat: massOf(from.trimmedMeat) };
  const { net, ...rest } = from;
  return { ...rest, netWeight: massOf(net) };
};

const givenOf = (from: BatchByPercent['from']): Fact[] =>
  'trimmedMeat' in from
    ? [{ what: coded('trimmed-meat'), is: typed(from.trimmedMeat) }]
    : [
        { what: coded('packages'), is: coded('packages-of', { packages: from.packages, net: typed(from.net) }) },
        {
          what: coded('yield'),
          is: coded(from.yieldOn === 'everything' ? 'yield-of-everything' : 'yield-of-meat', { percent: percent(from.yieldPercent) }),
        },
      ];

function backFrom({ packages, net, yieldPercent, yieldOn }: PackagesWanted, lines: readonly FormulaLine[], gives: Quantity): Step {
  const [each, yielded] = [typed(net), percent(yieldPercent)];
  const others = lines.map((line) => percent(line.percent));
  const isWhole = yieldOn === 'everything' && others.length > 0;
  return {
    what: coded('trimmed-meat'),
    rule: coded(isWhole ? 'back-from-packages-of-all' : 'back-from-packages'),
    putIn: isWhole
      ? sum`${packages} × ${each} ÷ ${yielded} ÷ (${percent(100)} + ${joined(others, ' + ')})`
      : sum`${packages} × ${each} ÷ ${yielded}`,
    gives,
  };
}

const resultsOf = ({ lines, all }: Batch<FormulaLine>, meat: Quantity, unit: EnteredMass['unit']): Fact[] => [
  { what: coded('trimmed-meat'), is: meat },
  ...lines.map(({ name, target }) => ({ what: name, is: grams(target) })),
  { what: coded('all-together'), is: roundedMass(all, unit) },
];
