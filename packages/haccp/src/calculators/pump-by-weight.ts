import { pumpPercent } from '../formula/brine';
import { isFault } from '../formula/fault';
import type { EnteredMass } from '../quantity/mass';
import { massOf, sayMass } from '../quantity/weigh';
import { numberOf, sayRatio } from './published-figure';
import { arithmetic, type CannotCalculate, type Calculation } from './calculation';

/** How much was pumped in, in percent of the green weight, from the weights before and after. */
export function pumpByWeight({ green, pumped }: { green: EnteredMass; pumped: EnteredMass }): Calculation | CannotCalculate {
  const [before, after] = [massOf(green), massOf(pumped)];
  const pump = pumpPercent(before, after);
  if (isFault(pump)) return { cannot: `${pump.fault} Check which weight is which.` };
  const said = sayRatio(pump, '%');
  return {
    title: 'Pump by weight',
    given: [
      { what: 'Green weight', said: `${green.value} ${green.unit}` },
      { what: 'Pumped weight', said: `${pumped.value} ${pumped.unit}` },
    ],
    steps: [
      {
        what: 'Pump',
        rule: '100 × (pumped weight − green weight) ÷ green weight',
        putIn: `100 × (${sayMass(after, 'g')} − ${sayMass(before, 'g')}) ÷ ${sayMass(before, 'g')}`,
        gives: said,
      },
    ],
    results: [
      { what: 'Pump', said, value: numberOf(pump), unit: '%' },
      { what: 'Pickle in the meat', said: sayMass(after - before, pumped.unit) },
    ],
    verdicts: [],
    notes: ['Weigh after it has drained: what drips out is not in the meat.'],
    sources: [arithmetic],
    cautions: [],
  };
}
