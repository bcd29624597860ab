import { burgers70For2, cooked70For2, equivalentMinutes } from '../lethality/equivalent-hold';
import { nameOfSet } from '../lethality/name-of-set';
import { ecoliO157InBurgers, listeria70For2 } from '../lethality/sets';
import { rowsOf, type Row } from '../kinds/dwell/dwell-rows';
import { rowIn } from '../kinds/dwell/row-in';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import { above } from '../quantity/bound';
import { degrees } from '../quantity/degrees';
import { millisecondsOf } from '../quantity/duration';
import { asGiven, degreesOf, printedIn, timeOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';

/** 70 °C for 2 min stands for these. */
const processes = {
  'cooked product': { printed: cooked70For2, set: listeria70For2 },
  burgers: { printed: burgers70For2, set: ecoliO157InBurgers },
} as const;
export const heldProducts = ['cooked product', 'burgers'] as const;

const REFERENCE_MINUTES = 2;

export type HoldAtAnotherTemperature = { product: (typeof heldProducts)[number]; value: number; unit: TemperatureUnit };

/** Printed rows first; the law behind them supports a process authority. Refused below the coldest printed row. */
export function holdAtAnotherTemperature({ product, value, unit }: HoldAtAnotherTemperature): Calculation | CannotCalculate {
  const { printed, set } = processes[product];
  const rows = rowsOf(printed) as [Row, ...Row[]]; // both tables are sound
  const core = degrees(value, unit);
  const row = rows.findLast(({ bound }) => above(core, bound) >= 0);
  if (!row) return cannot('below-coldest-row-authority', { core: degreesOf(core), coldest: printedIn(rows[0].printed.at, unit) });
  const celsius = unit === '°C' ? value : (value - 32) / 1.8;
  const seconds = equivalentMinutes(set, celsius, REFERENCE_MINUTES) * 60;
  const [byRow, byLaw] = [timeOf(millisecondsOf(row.printed.seconds)), coded('about-time', { time: timeOf(roundedUp(seconds)) })];
  return {
    given: [
      { what: coded('to-stand-for'), is: coded('seventy-for-two', { product: wordFor('held', product) }) },
      { what: coded('core'), is: degreesOf(core) },
    ],
    steps: [
      {
        what: coded('the-printed-row'),
        rule: coded('hottest-row'),
        putIn: coded('is-at-or-above', { core: degreesOf(core), row: printedIn(row.printed.at, unit) }),
        gives: rowIn(row.printed, unit),
      },
      {
        what: coded('law-behind-rows'),
        rule: coded('law-behind-rows.rule'),
        putIn: sum`2 min × 10^((70 − ${Number(celsius.toFixed(2))}) ÷ ${set.zCelsius})`,
        gives: byLaw,
      },
    ],
    results: [
      { what: coded('by-the-printed-row'), is: byRow, value: row.printed.seconds, unit: 's' },
      { what: coded('by-the-law'), is: byLaw, value: Number(seconds.toPrecision(4)), unit: 's' },
    ],
    judged: [],
    notes: [
      coded('row-decides'),
      coded('law-is-that-of', { set: nameOfSet(set), z: asGiven(set.zCelsius, '°C') }),
      coded('held-at-coldest'),
    ],
    sources: [printed.source, set.source],
    grounds: [],
    cautions: [cautions.model, cautions.limits],
  };
}

/** Milliseconds, rounded up: to the second from a minute on, to the tenth of a second below. */
const roundedUp = (seconds: number): number =>
  seconds < 60 ? Math.ceil(seconds * 10) * 100 : Math.ceil(Number(seconds.toFixed(3))) * 1000;
