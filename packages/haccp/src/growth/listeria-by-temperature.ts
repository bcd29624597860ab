import type { Source } from '../limits/source';

/** A second opinion that knows the temperature and nothing of the product. */
export type SecondOpinion =
  | {
      kind: 'estimate';
      readonly is: 'model estimate';
      readonly model: string;
      readonly version: '1';
      readonly source: Source;
      readonly log10PerDay: number;
    }
  | { kind: 'undetermined'; variable: 'celsius'; because: string };

const source: Source = {
  citation: 'Mataragas et al., J Food Prot 69(6), sliced vacuum-packed cooked cured product; from a public collection',
  edition: '2006',
  confirmed: false,
};
const model = 'L. monocytogenes, by temperature alone';

/** (0.058 (T + 1.03))² log10 per day, 4 to 16 °C. */
export function listeriaByTemperature(celsius: number): SecondOpinion {
  if (!(celsius >= 4 && celsius <= 16)) {
    const because = `The model says nothing at ${celsius} °C: it goes from 4 to 16 °C.`;
    return { kind: 'undetermined', variable: 'celsius', because };
  }
  const log10PerDay = (0.058 * (celsius + 1.03)) ** 2;
  return { kind: 'estimate', is: 'model estimate', model, version: '1', source, log10PerDay };
}
