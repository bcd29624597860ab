import { burgers70For2, cooked70For2, equivalentMinutes } from '../lethality/equivalent-hold';
import { ecoliO157InBurgers, listeria70For2 } from '../lethality/sets';
import { rowsOf, type Row } from '../kinds/dwell/dwell-rows';
import { sayRow } from '../kinds/dwell/say-row';
import { above, sayPrinted } from '../quantity/bound';
import { degrees, sayDegrees } from '../quantity/degrees';
import { millisecondsOf, sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import type { CannotCalculate, Calculation } from './calculation';

/** What 70 °C for 2 min is taken to stand for. */
const processes = {
  'cooked product': { printed: cooked70For2, set: listeria70For2 },
  burgers: { printed: burgers70For2, set: ecoliO157InBurgers },
} as const;
export const heldProducts = ['cooked product', 'burgers'] as const;

const REFERENCE_MINUTES = 2;

export type HoldAtAnotherTemperature = { product: (typeof heldProducts)[number]; value: number; unit: TemperatureUnit };

/**
 * A hold that is to stand for 70 °C for 2 min: the printed row first, the law behind the rows beside it as support for
 * a process authority. Refused below the coldest printed row.
 */
export function holdAtAnotherTemperature({ product, value, unit }: HoldAtAnotherTemperature): Calculation | CannotCalculate {
  const { printed, set } = processes[product];
  const rows = rowsOf(printed) as [Row, ...Row[]]; // both tables are sound
  const core = degrees(value, unit);
  const row = rows.findLast(({ bound }) => above(core, bound) >= 0);
  if (!row) {
    const coldest = sayPrinted(rows[0].printed.at, unit);
    return { cannot: `${sayDegrees(core)} is below the coldest printed row, ${coldest}: ask a process authority for such a hold.` };
  }
  const celsius = unit === '°C' ? value : (value - 32) / 1.8;
  const seconds = equivalentMinutes(set, celsius, REFERENCE_MINUTES) * 60;
  const [byRow, byLaw] = [sayDuration(millisecondsOf(row.printed.seconds)), `about ${sayLaw(seconds)}`];
  return {
    title: 'A hold at another temperature',
    given: [
      { what: 'To stand for', said: `70 °C for 2 min, ${product}` },
      { what: 'Core', said: sayDegrees(core) },
    ],
    steps: [
      {
        what: 'The printed row',
        rule: 'the hottest printed row at or below the core',
        putIn: `${sayDegrees(core)} is at or above ${sayPrinted(row.printed.at, unit)}`,
        gives: sayRow(row.printed, unit),
      },
      {
        what: 'The law behind the rows',
        rule: '2 min × 10^((70 °C − T) ÷ z)',
        putIn: `2 min × 10^((70 − ${Number(celsius.toFixed(2))}) ÷ ${set.zCelsius})`,
        gives: byLaw,
      },
    ],
    results: [
      { what: 'By the printed row', said: byRow, value: row.printed.seconds, unit: 's' },
      { what: 'By the law, as support', said: byLaw, value: Number(seconds.toPrecision(4)), unit: 's, model estimate' },
    ],
    verdicts: [],
    notes: [
      'The printed row decides. The time by the law is support that needs a process authority: nothing is accepted on it.',
      `The law is that of ${set.name}, z ${set.zCelsius} °C. Another product or organism has another.`,
      'Held at the coldest point, without a break; the error of the thermometer has to be allowed for.',
    ],
    sources: [printed.source, set.source],
    cautions: [cautions.model, cautions.limits],
  };
}

/** Rounded up, to the second from a minute on and to the tenth of a second below. */
const sayLaw = (seconds: number): string =>
  sayDuration(seconds < 60 ? Math.ceil(seconds * 10) * 100 : Math.ceil(Number(seconds.toFixed(3))) * 1000);
