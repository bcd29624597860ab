import { isFault } from '../formula/fault';
import { pumpedPhosphate } from '../formula/phosphate';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { phosphate } from '../limit-sets/curing';
import { sayPercent } from '../quantity/percent';
import { cautions } from './cautions';
import { judgedBefore, numberOf, publishedFigure, sayRatio } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

/** Phosphate in the pickle and pickle in the meat, in percent. */
export type PhosphateInPumpedMeat = { pickle: number; pump: number };

/** 0.5 % of the meat food product, held on the green weight: never heavier than the product, so the strict side. */
const mostInMeat: FigureLimit = { kind: 'figure', of: 'phosphate on the green weight', unit: '%', max: 500, source: phosphate.source };

/** Phosphate that a pickle brings into pumped meat, on its green and on its pumped weight. */
export function phosphateInPumpedMeat({ pickle, pump }: PhosphateInPumpedMeat): Calculation | CannotCalculate {
  const brought = pumpedPhosphate(pickle, pump);
  if (isFault(brought)) return { cannot: `${brought.fault} Give percentages above 0, at most 100.` };
  const { ofGreen, ofPumped } = brought;
  const atTen = publishedFigure('phosphate-pickle');
  return {
    title: 'Phosphate in pumped meat',
    given: [
      { what: 'Phosphate in the pickle', said: sayPercent(pickle) },
      { what: 'Pump', said: `${sayPercent(pump)} of the green weight` },
    ],
    steps: [
      {
        what: 'On the green weight',
        rule: 'phosphate in the pickle × pump',
        putIn: `${sayPercent(pickle)} × ${sayPercent(pump)}`,
        gives: sayRatio(ofGreen, '%'),
      },
      {
        what: 'On the pumped weight',
        rule: 'the same ÷ (100 % + pump)',
        putIn: `${sayRatio(ofGreen, '%')} ÷ (100 % + ${sayPercent(pump)})`,
        gives: sayRatio(ofPumped, '%'),
      },
    ],
    results: [
      { what: 'On the green weight', said: sayRatio(ofGreen, '%'), value: numberOf(ofGreen), unit: '%' },
      { what: 'On the pumped weight', said: sayRatio(ofPumped, '%'), value: numberOf(ofPumped), unit: '%' },
    ],
    verdicts: [judgedBefore(ofGreen, mostInMeat, 'Take less phosphate, or pump less, before the pickle is made.')],
    notes: [
      'The rule prints 0.5 % of the product, and 5 % in the pickle at 10 % pump. Held on the green weight it is never exceeded on the product.',
      'Only a clear solution may be injected.',
    ],
    sources: [phosphate.source, atTen.source],
    cautions: [cautions.limits],
  };
}
