import { above } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import { printedAllowing } from '../../quantity/printed-allowing';
import { degreesApart, degreesOf, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Holds } from '../../thermal/holds';
import { byStraightLines } from '../../limits/by-straight-lines';
import type { Row } from './dwell-rows';
import type { DwellLimit } from './dwell-limit';
import type { Coded, Figures, Judgement } from '../../limits/verdict';

/** `rows`, `holds` and `straight` go together by index. */
export type Dwell = {
  limit: DwellLimit;
  rows: readonly Row[];
  hottest: CurveReading;
  /** Milliseconds. */
  longestGap: number;
  holds: Holds;
  /** Milliseconds at or above each row. */
  straight: readonly number[];
  /** Taken off every reading, on the common scale. */
  error: number;
  unit: TemperatureUnit;
};
type Chosen = { row: Row; at: Quantity; held: number };

export function dwellMet(dwell: Dwell, index: number): Judgement {
  const { row, at, held } = choose(dwell, index);
  const spare = held - row.needed;
  const hottest = degreesOf(dwell.hottest.temperature);
  if (row.needed === 0) return { kind: 'met', finding: 'dwell-at-once', figures: { hottest, at }, spare };
  return {
    kind: 'met',
    finding: 'dwell-held',
    figures: { held: timeOf(held), at, needed: timeOf(row.needed), spare: timeOf(spare) },
    spare,
  };
}

/** Long enough only if nothing happened in a gap. */
export function dwellAcrossGap(dwell: Dwell, index: number): Judgement {
  const { row, at, held } = choose(dwell, index);
  const gap = timeOf(dwell.longestGap);
  const tolerated = timeOf(millisecondsOf(dwell.limit.longestGapSeconds));
  return {
    kind: 'undetermined',
    finding: 'dwell-gap',
    figures: { held: timeOf(held), at, gap, tolerated, needed: timeOf(row.needed) },
    notes: [{ code: 'dwell-across-gap', figures: { at } }],
  };
}

/** The row satisfied soonest if the temperature stays. */
export function dwellRunning(dwell: Dwell, last: CurveReading, now: number | undefined): Judgement {
  const soonest = leastBy(dwell.rows, ({ needed }, row) => {
    const since = dwell.holds.since[row];
    return since === undefined ? undefined : since + needed;
  });
  if (soonest === undefined) return comingUp(dwell);

  const { row, at } = choose(dwell, soonest);
  const since = dwell.holds.since[soonest] as number;
  const until = since + row.needed;
  const age = (now ?? last.at) - last.at;
  const isOld = age > millisecondsOf(dwell.limit.longestGapSeconds);
  const needed = timeOf(row.needed);
  return {
    kind: 'undetermined',
    finding: 'dwell-holding',
    figures: {
      ...{ held: timeOf(last.at - since), at, left: timeOf(until - last.at), needed },
      ...(isOld ? { age: timeOf(age) } : orReach(dwell)),
    },
    notes: straightNote(dwell, soonest),
    running: { code: 'dwell-hold', figures: { at, needed }, since, until },
  };
}

/** The row that lacks least. */
export function dwellMissed(dwell: Dwell): Judgement {
  const nearest = leastBy(dwell.rows, ({ needed }, row) => {
    const held = dwell.holds.longest[row] as number;
    return held < 0 ? undefined : needed - held;
  });
  if (nearest === undefined) return tooCold(dwell);

  const { row, at, held } = choose(dwell, nearest);
  return {
    kind: 'missed',
    finding: 'dwell-too-short',
    figures: {
      ...{ held: timeOf(held), at, needed: timeOf(row.needed), short: timeOf(row.needed - held) },
      hottest: degreesOf(dwell.hottest.temperature),
      ...orReach(dwell),
    },
    spare: held - row.needed,
    notes: straightNote(dwell, nearest),
  };
}

function comingUp(dwell: Dwell): Judgement {
  const { at } = choose(dwell, 0);
  return {
    kind: 'undetermined',
    finding: 'dwell-coming-up',
    figures: { hottest: degreesOf(dwell.hottest.temperature), at, ...errorIn(dwell) },
    running: { code: 'dwell-come-up', figures: { at } },
  };
}

function tooCold(dwell: Dwell): Judgement {
  const { row, at } = choose(dwell, 0);
  const { temperature } = dwell.hottest;
  const short = degreesApart(dwell.error - above(temperature, row.bound), temperature.unit, 'up');
  return {
    kind: 'missed',
    finding: 'dwell-too-cold',
    figures: {
      ...{ hottest: degreesOf(temperature), at, short },
      ...(row.needed > 0 ? { needed: timeOf(row.needed), ...orReach(dwell) } : {}),
      ...errorIn(dwell),
    },
  };
}

/** Only the table prints a lowest temperature: the one told is higher by the error. */
const errorIn = ({ error, unit }: Dwell): Figures => (error === 0 ? {} : { error: degreesApart(error, unit, 'up') });

/** Where different from what counts. */
function straightNote(dwell: Dwell, index: number): Coded[] {
  const { at, held } = choose(dwell, index);
  const straight = dwell.straight[index] as number;
  return straight <= held ? [] : [byStraightLines('dwell', straight, { at })];
}

/** The row as a reading has to show it. */
function choose({ rows, holds, unit, error }: Dwell, index: number): Chosen {
  const row = rows[index] as Row;
  return { row, at: printedAllowing(row.printed.at, unit, error), held: Math.max(0, holds.longest[index] as number) };
}

/** The row that needs no time. */
function orReach({ rows, unit, error }: Dwell): Figures {
  const instant = rows.find(({ needed }) => needed === 0);
  return instant ? { instant: printedAllowing(instant.printed.at, unit, error) } : {};
}

/** The hotter of equal rows; undefined values do not take part. */
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
