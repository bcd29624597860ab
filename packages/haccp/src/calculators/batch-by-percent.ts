import { batchOf, type Batch, type Wanted } from '../formula/batch-of';
import { isFault } from '../formula/fault';
import type { FormulaLine } from '../formula/formula';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { arithmetic, type CannotCalculate, type Fact, type Step, type Calculation } from './calculation';

/** Packages wanted; the yield is the packed weight as percent of the meat block or of everything that goes in. */
export type PackagesWanted = {
  packages: number;
  net: EnteredMass;
  yieldPercent: number;
  yieldOn: 'meat block' | 'everything';
};

export type BatchByPercent = { lines: readonly FormulaLine[]; from: { trimmedMeat: EnteredMass } | PackagesWanted };

/** What to weigh for the trimmed meat at hand, or back from the packages wanted, by lines of percent on the meat. */
export function batchByPercent({ lines, from }: BatchByPercent): Calculation | CannotCalculate {
  const batch = batchOf(lines, wantedOf(from));
  if (isFault(batch)) return { cannot: batch.fault };
  const unit = 'trimmedMeat' in from ? from.trimmedMeat.unit : from.net.unit;
  const meat = sayMass(batch.meat, unit, 3, 'up');
  return {
    title: 'A batch by percent',
    given: [...givenOf(from), ...lines.map(({ name, percent }) => ({ what: name, said: `${sayPercent(percent)} on the meat` }))],
    steps: [
      ...('trimmedMeat' in from ? [] : [backFrom(from, lines, meat)]),
      ...batch.lines.map(
        ({ name, percent, target }): Step => ({
          what: name,
          rule: 'meat × percent',
          putIn: `${meat} × ${sayPercent(percent)}`,
          gives: sayMass(target, 'g'),
        }),
      ),
    ],
    results: resultsOf(batch, meat, unit),
    verdicts: [],
    notes: [
      'Nothing here is judged: the restricted ingredients have limits of their own, see “Curing salt for so much meat”.',
      'The meat is trimmed, without bone. The yield is one’s own, from lots before.',
    ],
    sources: [arithmetic],
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
    ? [{ what: 'Trimmed meat', said: `${from.trimmedMeat.value} ${from.trimmedMeat.unit}` }]
    : [
        { what: 'Packages', said: `${from.packages} of ${from.net.value} ${from.net.unit}` },
        {
          what: 'Yield',
          said: `${sayPercent(from.yieldPercent)} of ${from.yieldOn === 'everything' ? 'everything that goes in' : 'the meat block'}`,
        },
      ];

function backFrom({ packages, net, yieldPercent, yieldOn }: PackagesWanted, lines: readonly FormulaLine[], gives: string): Step {
  const wanted = `${packages} × ${net.value} ${net.unit} ÷ ${sayPercent(yieldPercent)}`;
  const others = lines.map(({ percent }) => sayPercent(percent)).join(' + ');
  const isWhole = yieldOn === 'everything' && others !== '';
  return {
    what: 'Trimmed meat',
    rule: isWhole ? 'packages × net weight ÷ yield ÷ (100 % + lines)' : 'packages × net weight ÷ yield',
    putIn: isWhole ? `${wanted} ÷ (100 % + ${others})` : wanted,
    gives,
  };
}

const resultsOf = ({ lines, all }: Batch<FormulaLine>, meat: string, unit: EnteredMass['unit']): Fact[] => [
  { what: 'Trimmed meat', said: meat },
  ...lines.map(({ name, target }) => ({ what: name, said: sayMass(target, 'g') })),
  { what: 'All together', said: sayMass(all, unit) },
];
