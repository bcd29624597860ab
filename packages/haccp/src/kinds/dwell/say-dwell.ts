import { above, sayPrinted } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import { divide } from '../../quantity/divide';
import { millisecondsOf, sayAbout, sayDuration } from '../../quantity/duration';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Holds } from '../../thermal/holds';
import type { Row } from './dwell-rows';
import type { DwellLimit } from './dwell-limit';
import { sayRow } from './say-row';
import type { Verdict } from '../../limits/verdict';

/** What a dwell was found to be; `rows`, `holds` and `straight` go together by index. */
export type Dwell = {
  limit: DwellLimit;
  rows: readonly Row[];
  hottest: CurveReading;
  /** The longest time between two readings (ms). */
  longestGap: number;
  holds: Holds;
  /** Milliseconds at or above each row by straight lines. */
  straight: readonly number[];
  /** Taken off every reading, on the common scale. */
  error: number;
  unit: TemperatureUnit;
};
/** A row and its figure in the unit of the readings. */
type Chosen = { row: Row; figure: string; held: number };
type Said = Omit<Verdict, 'limit' | 'source' | 'notes'> & { notes?: string[] };

export function sayDwellMet(dwell: Dwell, index: number): Said {
  const { row, figure, held } = choose(dwell, index);
  const spare = held - row.needed;
  if (row.needed === 0) {
    const because = `The core reached ${figure}, where no holding time is needed.`;
    return { kind: 'met', measured: sayDegrees(dwell.hottest.temperature), spare, because };
  }
  return {
    kind: 'met',
    measured: `${sayDuration(held)} at or above ${figure}`,
    margin: `${sayDuration(spare)} to spare`,
    spare,
    because: `The core stayed at or above ${figure} for ${sayDuration(held)}; ${sayDuration(row.needed)} are needed.`,
  };
}

/** Long enough only if nothing happened in a gap. */
export function sayDwellGap(dwell: Dwell, index: number): Said {
  const { row, figure, held } = choose(dwell, index);
  const gap = sayDuration(dwell.longestGap);
  const tolerated = sayDuration(millisecondsOf(dwell.limit.longestGapSeconds));
  return {
    kind: 'undetermined',
    measured: `${sayDuration(held)} at or above ${figure}`,
    because: `There is no reading for ${gap}; at most ${tolerated} may lie between two readings.`,
    next: `Add the readings in between from the logger, or hold again: ${sayRow(row.printed, dwell.unit)}.`,
    notes: [`Across the gap it would be long enough, but nobody knows that it stayed at ${figure}.`],
  };
}

/** While heating goes on: the row that can be satisfied soonest if the temperature stays. */
export function sayDwellRunning(dwell: Dwell, last: CurveReading, now: number | undefined): Said {
  const soonest = leastBy(dwell.rows, ({ needed }, row) => {
    const since = dwell.holds.since[row];
    return since === undefined ? undefined : since + needed;
  });
  if (soonest === undefined) return sayComeUp(dwell);

  const { row, figure } = choose(dwell, soonest);
  const since = dwell.holds.since[soonest] as number;
  const until = since + row.needed;
  const left = sayDuration(until - last.at);
  const age = (now ?? last.at) - last.at;
  return {
    kind: 'undetermined',
    measured: `${sayDuration(last.at - since)} at or above ${figure}`,
    margin: `${left} to go`,
    because: `${sayDuration(row.needed)} at or above ${figure} are needed.`,
    next:
      age > millisecondsOf(dwell.limit.longestGapSeconds)
        ? `Read the core now: the last reading is ${sayDuration(age)} old.`
        : `Keep heating: ${left} more at or above ${figure}${sayOrReach(dwell)}.`,
    notes: straightNote(dwell, soonest),
    running: { stage: 'hold', bound: sayRow(row.printed, dwell.unit), since, until },
  };
}

/** Ended without any row satisfied: the row that lacks least. */
export function sayDwellMissed(dwell: Dwell): Said {
  const nearest = leastBy(dwell.rows, ({ needed }, row) => {
    const held = dwell.holds.longest[row] as number;
    return held < 0 ? undefined : needed - held;
  });
  if (nearest === undefined) return sayTooCold(dwell);

  const { row, figure, held } = choose(dwell, nearest);
  const lacking = sayDuration(row.needed - held);
  const needed = sayDuration(row.needed);
  const again = `${needed} without a break at or above ${figure}${sayOrReach(dwell)}`;
  return {
    kind: 'missed',
    measured: `${sayDuration(held)} at or above ${figure}, ${sayDegrees(dwell.hottest.temperature)} at most`,
    margin: `${lacking} short`,
    spare: held - row.needed,
    because: `The longest stretch at or above ${figure} is ${lacking} short of ${needed}.`,
    next: `Keep heating: ${again}. Hold the lot until then.`,
    notes: straightNote(dwell, nearest),
  };
}

function sayComeUp(dwell: Dwell): Said {
  const { figure } = choose(dwell, 0);
  return {
    kind: 'undetermined',
    measured: sayDegrees(dwell.hottest.temperature),
    because: `The core is not at ${figure}, the lowest temperature of the table.`,
    next: `Keep heating: reach at least ${figure}.`,
    running: { stage: 'come-up', bound: figure },
  };
}

function sayTooCold(dwell: Dwell): Said {
  const { row, figure } = choose(dwell, 0);
  const { temperature } = dwell.hottest;
  const perHundredth = temperature.unit === '°C' ? 9n : 5n;
  const short = divide(BigInt(dwell.error - above(temperature, row.bound)), perHundredth, 'up');
  return {
    kind: 'missed',
    measured: sayDegrees(temperature),
    margin: `${decimalText(short, 2)} ${temperature.unit} short`,
    because: `The core never reached ${figure}, the lowest temperature of the table.`,
    next: `Keep heating: ${sayRow(row.printed, dwell.unit)}${sayOrReach(dwell)}. Hold the lot until then.`,
  };
}

/** What straight lines between the readings would give, where that differs from what counts. */
function straightNote(dwell: Dwell, index: number): string[] {
  const { figure, held } = choose(dwell, index);
  const straight = dwell.straight[index] as number;
  if (straight <= held) return [];
  const estimate = `${sayAbout(straight)} at or above ${figure} in all`;
  return [`By straight lines between the readings: ${estimate}. For information only.`];
}

function choose({ rows, holds, unit }: Dwell, index: number): Chosen {
  const row = rows[index] as Row;
  return { row, figure: sayPrinted(row.printed.at, unit), held: Math.max(0, holds.longest[index] as number) };
}

function sayOrReach({ rows, unit }: Dwell): string {
  const instant = rows.find(({ needed }) => needed === 0);
  return instant ? `, or reach ${sayPrinted(instant.printed.at, unit)}` : '';
}

/** The index with the least value, the hotter row where two are equal; undefined values do not take part. */
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
