import { replacedByCitric } from '../formula/accelerators';
import { isFault } from '../formula/fault';
import type { EnteredMass } from '../quantity/mass';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { judgedBefore, numberOf, publishedFigure, sayRatio } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

export type CitricForAccelerator = { accelerator: EnteredMass; citric: EnteredMass };

/** The share of the cure accelerator that citric acid or sodium citrate stands in for. */
export function citricForAccelerator({ accelerator, citric }: CitricForAccelerator): Calculation | CannotCalculate {
  const [own, instead] = [massOf(accelerator), massOf(citric)];
  const share = replacedByCitric({ ascorbateOrErythorbate: own, citric: instead });
  if (isFault(share)) return { cannot: `${share.fault} Weigh both.` };
  const limit = publishedFigure('citric');
  const said = sayRatio(share, '%');
  return {
    title: 'Citric acid in place of the accelerator',
    given: [
      { what: 'Ascorbate or erythorbate', said: `${accelerator.value} ${accelerator.unit}` },
      { what: 'Citric acid or sodium citrate', said: `${citric.value} ${citric.unit}` },
    ],
    steps: [
      {
        what: 'Replaced',
        rule: '100 × citric ÷ (accelerator + citric)',
        putIn: `100 × ${sayMass(instead, 'g')} ÷ ${sayMass(own + instead, 'g')}`,
        gives: said,
      },
    ],
    results: [{ what: 'Replaced', said, value: numberOf(share), unit: '%' }],
    verdicts: [judgedBefore(share, limit, 'Replace less of the accelerator.')],
    notes: [
      'Accelerators are allowed only together with a curing agent.',
      'What is replaced also comes off the most that the accelerator may be: see “Ingoing amount by method”.',
    ],
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}
