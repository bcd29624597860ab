import { factorsOf, type ListeriaProduct } from '../growth/listeria-product';
import type { ListeriaRate } from '../growth/listeria-rate';
import { daysToHundredfold, listeriaGrowth, type Storage } from '../growth/listeria-storage';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { Quantity } from '../quantity/quantity';
import type { Calculation } from './calculation';
import type { CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { plainly } from './figures';
import { asGiven } from '../quantity/quantities';

/** Refused outside the range of the model, naming the figure. */
export function listeriaInThePack(product: ListeriaProduct, storage: Storage): Calculation | CannotCalculate {
  const growth = listeriaGrowth(product, [storage]);
  if (growth.kind === 'undetermined') return { cannot: [growth.why] };
  const [rate] = growth.rates as readonly [ListeriaRate & Storage]; // of the one storage
  const { waterActivity } = factorsOf(product, storage.celsius);
  const days = daysToHundredfold(rate);
  const [kept, hours] = [asGiven(storage.celsius, '°C'), asGiven(storage.hours, 'h')];
  const aw: Quantity = { value: waterActivity.toFixed(4), unit: 'aw' };
  return {
    given: [
      { what: coded('salt-in-water'), is: asGiven(product.waterPhaseSalt, '%') },
      { what: 'pH', is: plainly(product.pH) },
      { what: coded('nitrite-in-product'), is: asGiven(product.nitritePpm ?? 0, 'ppm') },
      { what: coded('kept-at'), is: coded('so-long', { at: kept, time: hours }) },
    ],
    steps: [
      {
        what: coded('analysed-aw'),
        rule: coded('aw-of-salt.rule'),
        putIn: sum`1 − 0.0052471 × ${product.waterPhaseSalt} − 0.00012206 × ${product.waterPhaseSalt}²`,
        gives: aw,
      },
      {
        what: coded('rate'),
        rule: coded('listeria-model'),
        putIn: sum`${kept}, ${asGiven(product.pH, 'pH')}, ${aw}`,
        gives: coded('per-hour', { rate: plainly(rate.perHour.toFixed(5)) }),
      },
    ],
    results: [
      {
        what: coded('grown-after', { time: hours }),
        is: { value: growth.log10.toFixed(1), unit: 'log10' },
        value: growth.log10,
        unit: 'log10',
      },
      {
        what: coded('to-a-hundredfold'),
        is: Number.isFinite(days) ? coded('about-days', { count: Math.floor(days) }) : coded('no-growth'),
      },
    ],
    judged: [],
    notes: [coded(growth.claim)],
    sources: [growth.source],
    grounds: [],
    cautions: [cautions.model],
  };
}
