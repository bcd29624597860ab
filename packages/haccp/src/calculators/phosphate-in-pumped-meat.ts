import { isFault } from '../formula/fault';
import { pumpedPhosphate } from '../formula/phosphate';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { phosphate } from '../limit-sets/curing';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { Calculation } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { percent } from './figures';
import { ratioOf, judgedBefore, numberOf, publishedFigure } from './published-figure';

/** In percent: phosphate in the pickle, pickle in the meat. */
export type PhosphateInPumpedMeat = { pickle: number; pump: number };

/** 0.5 % of the meat food product. The green weight is never heavier, so it is the strict side. */
const mostInMeat: FigureLimit = { kind: 'figure', of: 'phosphate on the green weight', unit: '%', max: 500, source: phosphate.source };

export function phosphateInPumpedMeat({ pickle, pump }: PhosphateInPumpedMeat): Calculation | CannotCalculate {
  const brought = pumpedPhosphate(pickle, pump);
  if (isFault(brought)) return atFault(brought, 'percentages-above-zero');
  const { ofGreen, ofPumped } = brought;
  const [onGreen, onPumped] = [ratioOf(ofGreen, '%'), ratioOf(ofPumped, '%')];
  const atTen = publishedFigure('phosphate-pickle');
  return {
    given: [
      { what: coded('phosphate-in-pickle'), is: percent(pickle) },
      { what: coded('pump'), is: coded('of-green-weight', { percent: percent(pump) }) },
    ],
    steps: [
      {
        what: coded('on-green-weight'),
        rule: coded('on-green-weight.rule'),
        putIn: sum`${percent(pickle)} × ${percent(pump)}`,
        gives: onGreen,
      },
      {
        what: coded('on-pumped-weight'),
        rule: coded('on-pumped-weight.rule'),
        putIn: sum`${onGreen} ÷ (${percent(100)} + ${percent(pump)})`,
        gives: onPumped,
      },
    ],
    results: [
      { what: coded('on-green-weight'), is: onGreen, value: numberOf(ofGreen), unit: '%' },
      { what: coded('on-pumped-weight'), is: onPumped, value: numberOf(ofPumped), unit: '%' },
    ],
    judged: [judgedBefore(ofGreen, mostInMeat, 'less-phosphate')],
    notes: [coded('phosphate-on-green-holds'), coded('clear-solution')],
    sources: [phosphate.source, atTen.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}
