import { moistureToProtein, saltInWaterPhase } from '../formula/brine';
import type { Ratio } from '../formula/curing-species';
import { isFault, type Worked } from '../formula/fault';
import { keepsIn, stabilityOf } from '../formula/shelf-stability';
import { addedWater, fatAndAddedWater } from '../formula/water-and-fat';
import type { Source } from '../limits/source';
import { decimalText, scaled } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import { cautions } from './cautions';
import type { CannotCalculate, Result, Step, Calculation } from './calculation';

/** Analyses of a finished product: percentages by weight, and what a meter shows. */
export type CompositionByAnalysis = { moisture: number; protein: number; fat: number; salt: number; pH?: number; aw?: number };

/** Added water, fat and added water, moisture to protein, salt in the water phase and, with pH and aw, how it keeps. */
export function compositionByAnalysis(given: CompositionByAnalysis): Calculation | CannotCalculate {
  const { moisture, protein, fat, salt, pH, aw } = given;
  const exact = (value: number) => BigInt(scaled(value, 3) ?? -1);
  const steps: Worked<Step & { value: number }>[] = [
    step('Added water', '%', 'moisture − 4 × protein', `${moisture} − 4 × ${protein}`, addedWater({ moisture, protein })),
    step('Fat and added water', '%', 'fat + added water', `${fat} + added water`, fatAndAddedWater({ moisture, protein, fat })),
    step('Moisture to protein', '', 'moisture ÷ protein', `${moisture} ÷ ${protein}`, moistureToProtein(exact(moisture), exact(protein))),
    step(
      'Salt in the water phase',
      '%',
      '100 × salt ÷ (salt + moisture)',
      `100 × ${salt} ÷ (${salt} + ${moisture})`,
      saltInWaterPhase(exact(salt), exact(moisture)),
    ),
  ];
  const fault = steps.find(isFault);
  if (fault) return { cannot: fault.fault };
  const stability = pH === undefined || aw === undefined ? undefined : stabilityOf({ pH, aw });
  if (typeof stability === 'object') return { cannot: stability.fault };
  const keeps = aw === undefined ? undefined : keepsIn(aw);
  if (typeof keeps === 'object') return { cannot: keeps.fault };
  const worked = steps as (Step & { value: number })[]; // none of them is a fault
  return {
    title: 'Composition by analysis',
    given: Object.entries(given).map(([what, value]) => ({ what: WORDS[what as keyof CompositionByAnalysis], said: `${value}` })),
    steps: worked.map(({ what, rule, putIn, gives }) => ({ what, rule, putIn, gives })),
    results: [
      ...worked.map(({ what, gives, value }): Result => ({ what, said: gives, value })),
      ...(stability ? [{ what: 'By its pH and water activity', said: stability }] : []),
      ...(keeps ? [{ what: 'Kept by its water activity alone', said: keeps }] : []),
    ],
    verdicts: [],
    notes: [
      'Moisture to protein is a standard of labelling and no proof of safety.',
      ...(keeps
        ? ['By water activity alone, whatever the pH: up to 0.85 in air, up to 0.91 in vacuum. The process must be validated.']
        : []),
    ],
    sources: [
      {
        citation: 'Principles of Preservation of Shelf-Stable Dried Meat Products, FSIS training material, pp. 159-160',
        edition: '2005',
        confirmed: true,
      },
      ...(keeps ? [jerky] : []),
    ],
    cautions: [cautions.limits],
  };
}

const jerky: Source = {
  citation: 'FSIS Compliance Guideline for Meat and Poultry Jerky, pp. 15-16, read in extracts',
  edition: '2014',
  confirmed: false,
};

const WORDS: Record<keyof CompositionByAnalysis, string> = {
  moisture: 'Moisture, %',
  protein: 'Protein, %',
  fat: 'Fat, %',
  salt: 'Salt, %',
  pH: 'pH',
  aw: 'Water activity',
};

function step(what: string, unit: string, rule: string, putIn: string, ratio: Worked<Ratio>): Worked<Step & { value: number }> {
  if (isFault(ratio)) return ratio;
  const thousandths = divide(ratio.numerator * 1000n, ratio.denominator, 'nearest');
  const gives = `${decimalText(thousandths, 3)}${unit && ` ${unit}`}`;
  return { what, rule, putIn, gives, value: Number(thousandths) / 1000 };
}
