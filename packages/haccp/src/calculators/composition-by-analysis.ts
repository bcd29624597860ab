import { moistureToProtein, saltInWaterPhase } from '../formula/brine';
import type { Ratio } from '../formula/curing-species';
import { isFault, type OrFault } from '../formula/fault';
import { keepsIn, stabilityOf } from '../formula/shelf-stability';
import { addedWater, fatAndAddedWater } from '../formula/water-and-fat';
import { coded, wordFor } from '../limits/coded';
import type { Source } from '../limits/source';
import { sum, type Sum } from '../limits/line-part';
import { scaled } from '../quantity/decimal';
import type { QuantityUnit } from '../quantity/quantity';
import type { Calculation, Result, Step } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { plainly } from './figures';
import { ratioOf, numberOf } from './published-figure';

/** Percentages by weight, but for pH and aw. */
export type CompositionByAnalysis = { moisture: number; protein: number; fat: number; salt: number; pH?: number; aw?: number };

export function compositionByAnalysis(given: CompositionByAnalysis): Calculation | CannotCalculate {
  const { moisture, protein, fat, salt, pH, aw } = given;
  const exact = (value: number) => BigInt(scaled(value, 3) ?? -1);
  const steps: OrFault<StepWithValue>[] = [
    step('added-water', '%', sum`${moisture} − 4 × ${protein}`, addedWater({ moisture, protein })),
    step('fat-and-added-water', '%', sum`${fat} + (${moisture} − 4 × ${protein})`, fatAndAddedWater({ moisture, protein, fat })),
    step('moisture-to-protein', 'ratio', sum`${moisture} ÷ ${protein}`, moistureToProtein(exact(moisture), exact(protein))),
    step('salt-in-water', '%', sum`100 × ${salt} ÷ (${salt} + ${moisture})`, saltInWaterPhase(exact(salt), exact(moisture))),
  ];
  const fault = steps.find(isFault);
  if (fault) return atFault(fault);
  const stability = pH === undefined || aw === undefined ? undefined : stabilityOf({ pH, aw });
  if (typeof stability === 'object') return atFault(stability);
  const keeps = aw === undefined ? undefined : keepsIn(aw);
  if (typeof keeps === 'object') return atFault(keeps);
  const known = steps as StepWithValue[]; // Faults have returned before.
  return {
    given: Object.entries(given).map(([name, value]) => ({ what: wordFor('analysed', name), is: plainly(value) })),
    steps: known.map(({ what, rule, putIn, gives }) => ({ what, rule, putIn, gives })),
    results: [
      ...known.map(({ what, gives, value }): Result => ({ what, is: gives, value })),
      ...(stability ? [{ what: coded('by-ph-and-aw'), is: wordFor('stability', stability) }] : []),
      ...(keeps ? [{ what: coded('kept-by-aw'), is: wordFor('kept-in', keeps) }] : []),
    ],
    judged: [],
    notes: [coded('moisture-to-protein-no-proof'), ...(keeps ? [coded('aw-alone')] : [])],
    sources: [
      {
        citation: 'Principles of Preservation of Shelf-Stable Dried Meat Products, FSIS training material, pp. 159-160',
        edition: '2005',
        confirmed: true,
      },
      ...(keeps ? [jerky] : []),
    ],
    grounds: [],
    cautions: [cautions.limits],
  };
}

const jerky: Source = {
  citation: 'FSIS Compliance Guideline for Meat and Poultry Jerky, pp. 15-16, read in extracts',
  edition: '2014',
  confirmed: false,
};

type StepWithValue = Step & { value: number };

const step = (what: string, unit: QuantityUnit, putIn: Sum, ratio: OrFault<Ratio>): OrFault<StepWithValue> =>
  isFault(ratio) ? ratio : { what: coded(what), rule: coded(`${what}.rule`), putIn, gives: ratioOf(ratio, unit), value: numberOf(ratio) };
