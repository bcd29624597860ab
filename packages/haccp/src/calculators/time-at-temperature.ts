import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { sayRow } from '../kinds/dwell/say-row';
import { rowsOf } from '../kinds/dwell/dwell-rows';
import { above, sayPrinted } from '../quantity/bound';
import { degrees, sayDegrees } from '../quantity/degrees';
import { sayDuration, millisecondsOf } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import type { CannotCalculate, Calculation } from './calculation';

/** How long the core has to stay at a temperature, by the printed row at or below it: never a row between two. */
export function timeAtTemperature(value: number, unit: TemperatureUnit, limit: DwellLimit, title: string): Calculation | CannotCalculate {
  const rows = rowsOf(limit);
  const coldest = rows?.[0];
  if (!rows || !coldest) return { cannot: 'This limit has no usable table of holding times.' };
  const core = degrees(value, unit);
  const row = rows.findLast(({ bound }) => above(core, bound) >= 0);
  if (!row) {
    const least = sayPrinted(coldest.printed.at, unit);
    return { cannot: `${sayDegrees(core)} is below the coldest row of this table, ${least}: no holding time counts.` };
  }
  const needed = row.needed === 0 ? 'no holding time' : sayDuration(millisecondsOf(row.printed.seconds));
  return {
    title,
    given: [
      { what: 'Core', said: sayDegrees(core) },
      { what: 'Table', said: limit.source.citation },
    ],
    steps: [
      {
        what: 'The row that counts',
        rule: 'the hottest printed row at or below the core',
        putIn: `${sayDegrees(core)} is at or above ${sayPrinted(row.printed.at, unit)}`,
        gives: sayRow(row.printed, unit),
      },
    ],
    results: [{ what: 'To be held for', said: needed, value: row.printed.seconds, unit: 's' }],
    verdicts: [],
    notes: [
      'Measured at the coldest point, without a break. The error of the thermometer has to be allowed for.',
      'The conditions of the table go with it: moist product, humidity, and the time to come up.',
    ],
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}
