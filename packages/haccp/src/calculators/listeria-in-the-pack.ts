import { factorsOf, type ListeriaProduct } from '../growth/listeria-product';
import type { ListeriaRate } from '../growth/listeria-rate';
import { daysToHundredfold, listeriaGrowth, type Storage } from '../growth/listeria-storage';
import { cautions } from './cautions';
import type { CannotCalculate, Calculation } from './calculation';

/** What L. monocytogenes may do in a chilled pack; refused, naming the figure, outside what the model covers. */
export function listeriaInThePack(product: ListeriaProduct, storage: Storage): Calculation | CannotCalculate {
  const growth = listeriaGrowth(product, [storage]);
  if (growth.kind === 'undetermined') return { cannot: `${growth.because} (${growth.variable})` };
  const [rate] = growth.rates as readonly [ListeriaRate & Storage]; // of the one storage asked for
  const { waterActivity } = factorsOf(product, storage.celsius);
  const days = daysToHundredfold(rate);
  return {
    title: 'Listeria in a chilled pack',
    given: [
      { what: 'Salt in the water phase', said: `${product.waterPhaseSalt} %` },
      { what: 'pH', said: `${product.pH}` },
      { what: 'Nitrite in the product', said: `${product.nitritePpm ?? 0} ppm` },
      { what: 'Kept at', said: `${storage.celsius} °C for ${storage.hours} h` },
    ],
    steps: [
      {
        what: 'Water activity',
        rule: '1 − 0.0052471 × salt − 0.00012206 × salt²',
        putIn: `salt ${product.waterPhaseSalt} % in the water phase`,
        gives: waterActivity.toFixed(4),
      },
      {
        what: 'Rate',
        rule: growth.model,
        putIn: `${storage.celsius} °C, pH ${product.pH}, aw ${waterActivity.toFixed(4)}`,
        gives: `${rate.perHour.toFixed(5)} per hour`,
      },
    ],
    results: [
      {
        what: `After ${storage.hours} h (${growth.is})`,
        said: `${growth.log10.toFixed(1)} log`,
        value: growth.log10,
        unit: 'log10, model estimate',
      },
      { what: 'To a hundredfold', said: Number.isFinite(days) ? `about ${Math.floor(days)} days` : 'no growth predicted' },
    ],
    verdicts: [],
    notes: [growth.claim],
    sources: [growth.source],
    cautions: [cautions.model],
  };
}
