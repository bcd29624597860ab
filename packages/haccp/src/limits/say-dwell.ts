import { above, sayPrinted } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import { decimalText } from '../quantity/decimal';
import { sayDegrees } from '../quantity/degrees';
import { divide } from '../quantity/divide';
import { millisecondsOf, sayAbout, sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { atOrAbove } from '../thermal/crossing';
import type { CurveReading } from '../thermal/curve';
import type { Holds } from '../thermal/holds';
import type { Row } from './dwell-rows';
import type { DwellLimit } from './limit';
import { sayRow } from './say-limit';
import type { Verdict } from './verdict';

/** What a dwell was found to be; `rows` and `holds` go together by index. */
export type Dwell = {
  limit: DwellLimit;
  rows: Row[];
  readings: readonly CurveReading[];
  holds: Holds;
  unit: TemperatureUnit;
};
type Said = Omit<Verdict, 'limit' | 'source' | 'notes'> & { notes?: string[] };

export function sayDwellMet({ rows, holds, readings, unit }: Dwell, index: number): Said {
  const row = rows[index] as Row;
  const figure = sayPrinted(row.printed.at, unit);
  const spare = (holds.longest[index] ?? 0) - row.needed;
  if (row.needed === 0) {
    const measured = sayHottest(readings);
    return { kind: 'met', measured, spare, because: `The core reached ${figure}, where no holding time is needed.` };
  }
  const held = sayDuration(holds.longest[index] ?? 0);
  return {
    kind: 'met',
    measured: `${held} at or above ${figure}`,
    margin: `${sayDuration(spare)} to spare`,
    spare,
    because: `The core stayed at or above ${figure} for ${held}; ${sayDuration(row.needed)} are needed.`,
  };
}

export function sayDwellGap(dwell: Dwell, index: number): Said {
  const row = dwell.rows[index] as Row;
  const figure = sayPrinted(row.printed.at, dwell.unit);
  const tolerated = sayDuration(millisecondsOf(dwell.limit.longestGapSeconds));
  return {
    kind: 'undetermined',
    measured: sayHeld(dwell, index),
    because: `There is no reading for ${sayDuration(longestGapIn(dwell.readings))}; at most ${tolerated} may lie between two readings.`,
    next: `Add the readings in between from the logger, or hold again: ${sayRow(row.printed, dwell.unit)}.`,
    notes: [`Across the gap it would be long enough: ${sayRow(row.printed, dwell.unit)}. Nobody knows that it stayed at ${figure}.`],
  };
}

export function sayDwellRunning(dwell: Dwell, last: CurveReading, now: number | undefined): Said {
  const { rows, holds, unit, readings } = dwell;
  const best = leastBy(rows, ({ needed }, row) => {
    const since = holds.since[row];
    return since === undefined ? undefined : since + needed;
  });
  if (best === undefined) {
    const lowest = sayPrinted((rows[0] as Row).printed.at, unit);
    const running = { stage: 'come-up', bound: lowest };
    const because = `The core has not reached ${lowest}, the lowest temperature of the table.`;
    return { kind: 'undetermined', measured: sayHottest(readings), because, next: `Keep heating: reach at least ${lowest}.`, running };
  }
  const row = rows[best] as Row;
  const since = holds.since[best] ?? last.at;
  const until = since + row.needed;
  const figure = sayPrinted(row.printed.at, unit);
  const left = sayDuration(until - last.at);
  const isStale = now !== undefined && now - last.at > millisecondsOf(dwell.limit.longestGapSeconds);
  return {
    kind: 'undetermined',
    measured: `${sayDuration(last.at - since)} at or above ${figure}`,
    margin: `${left} to go`,
    because: `${sayDuration(row.needed)} at or above ${figure} are needed.`,
    next: isStale
      ? `Read the core now: the last reading is ${sayDuration((now ?? 0) - last.at)} old.`
      : `Keep heating: ${left} more at or above ${figure}${sayOrReach(rows, unit)}.`,
    notes: straightNote(dwell, best),
    running: { stage: 'hold', bound: sayRow(row.printed, unit), since, until },
  };
}

export function sayDwellMissed(dwell: Dwell): Said {
  const { rows, holds, unit, readings } = dwell;
  const nearest = leastBy(rows, ({ needed }, row) => {
    const held = holds.longest[row] ?? -1;
    return held < 0 ? undefined : needed - held;
  });
  if (nearest === undefined) return sayTooCold(dwell);

  const row = rows[nearest] as Row;
  const lacking = row.needed - (holds.longest[nearest] ?? 0);
  const figure = sayPrinted(row.printed.at, unit);
  return {
    kind: 'missed',
    measured: `${sayHeld(dwell, nearest)}, ${sayHottest(readings)} at most`,
    margin: `${sayDuration(lacking)} short`,
    spare: -lacking,
    because: `The longest stretch at or above ${figure} is ${sayDuration(lacking)} short of ${sayDuration(row.needed)}.`,
    next: `Keep heating: ${sayDuration(row.needed)} without a break at or above ${figure}${sayOrReach(rows, unit)}. Hold the lot until then.`,
    notes: straightNote(dwell, nearest),
  };
}

function sayTooCold({ rows, unit, readings }: Dwell): Said {
  const lowest = rows[0] as Row;
  const figure = sayPrinted(lowest.printed.at, unit);
  const hottest = hottestOf(readings);
  const short = -above(hottest.temperature, lowest.bound);
  const perHundredth = hottest.temperature.unit === '°C' ? 9n : 5n;
  const margin = `${decimalText(divide(BigInt(short), perHundredth, 'up'), 2)} ${hottest.temperature.unit} short`;
  return {
    kind: 'missed',
    measured: sayHottest(readings),
    margin,
    because: `The core never reached ${figure}, the lowest temperature of the table.`,
    next: `Keep heating: ${sayRow(lowest.printed, unit)}${sayOrReach(rows, unit)}. Hold the lot until then.`,
  };
}

/** What straight lines between the readings would give, where that differs from what counts. */
function straightNote({ rows, readings, holds, unit }: Dwell, index: number): string[] {
  const row = rows[index] as Row;
  let straight = 0;
  for (let i = 1; i < readings.length; i += 1) {
    straight += atOrAbove(readings[i - 1] as CurveReading, readings[i] as CurveReading, row.bound);
  }
  if (straight <= (holds.longest[index] ?? 0)) return [];
  const figure = sayPrinted(row.printed.at, unit);
  return [`By straight lines between the readings: ${sayAbout(straight)} at or above ${figure} in all. For information only.`];
}

const sayHeld = ({ rows, holds, unit }: Dwell, index: number): string =>
  `${sayDuration(Math.max(0, holds.longest[index] ?? 0))} at or above ${sayPrinted((rows[index] as Row).printed.at, unit)}`;

function sayOrReach(rows: readonly Row[], unit: TemperatureUnit): string {
  const instant = rows.find(({ needed }) => needed === 0);
  return instant ? `, or reach ${sayPrinted(instant.printed.at, unit)}` : '';
}

export const sayHottest = (readings: readonly CurveReading[]): string => sayDegrees(hottestOf(readings).temperature);

function hottestOf(readings: readonly CurveReading[]): CurveReading {
  return readings.reduce((hottest, reading) =>
    onCommonScale(reading.temperature) > onCommonScale(hottest.temperature) ? reading : hottest,
  );
}

function longestGapIn(readings: readonly CurveReading[]): number {
  return readings.reduce((gap, { at }, index) => Math.max(gap, at - (readings[index - 1]?.at ?? at)), 0);
}

/** The index with the least value; undefined values do not take part. */
function leastBy(rows: readonly Row[], value: (row: Row, index: number) => number | undefined): number | undefined {
  let best: number | undefined;
  let least = Infinity;
  rows.forEach((row, index) => {
    const own = value(row, index);
    if (own === undefined || own > least) return;
    least = own;
    best = index;
  });
  return best;
}
