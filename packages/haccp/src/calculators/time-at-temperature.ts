import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { rowsOf } from '../kinds/dwell/dwell-rows';
import { rowIn } from '../kinds/dwell/row-in';
import { coded } from '../limits/coded';
import { above } from '../quantity/bound';
import { degrees } from '../quantity/degrees';
import { millisecondsOf } from '../quantity/duration';
import { degreesOf, printedIn, timeOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';

/** By the printed row at or below it, never between two rows. */
export function timeAtTemperature(value: number, unit: TemperatureUnit, limit: DwellLimit, title: string): Calculation | CannotCalculate {
  const rows = rowsOf(limit);
  const coldest = rows?.[0];
  if (!rows || !coldest) return cannot('no-holding-table');
  const core = degrees(value, unit);
  const row = rows.findLast(({ bound }) => above(core, bound) >= 0);
  if (!row) return cannot('below-coldest-row', { core: degreesOf(core), coldest: printedIn(coldest.printed.at, unit) });
  return {
    given: [
      { what: coded('core'), is: degreesOf(core) },
      { what: coded('table'), is: title },
    ],
    steps: [
      {
        what: coded('row-that-counts'),
        rule: coded('hottest-row'),
        putIn: coded('is-at-or-above', { core: degreesOf(core), row: printedIn(row.printed.at, unit) }),
        gives: rowIn(row.printed, unit),
      },
    ],
    results: [
      {
        what: coded('to-be-held-for'),
        is: row.needed === 0 ? coded('no-holding-time') : timeOf(millisecondsOf(row.printed.seconds)),
        value: row.printed.seconds,
        unit: 's',
      },
    ],
    judged: [],
    notes: [coded('held-at-coldest'), coded('conditions-of-table')],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}
