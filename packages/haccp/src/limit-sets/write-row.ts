import type { FigureLimit, FigureUnit } from '../formula/figure-limit';
import type { CoolingStage, CriticalLimit, RestrictedSubstance, StrictSigns } from '../limits/limit';
import { scaled } from '../quantity/decimal';
import type { PrintedTemperature } from '../quantity/temperature';
import type { Force, Known, LimitRow, Purpose } from './limit-set';
import { printedSeconds } from './printed';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

/** What rows are taken from. `known` is how it was read, and holds for its rows unless one says otherwise. */
export type Work = { citation: string; edition: string; url?: string; validFrom: string; force: Force; known: Known };

type Unsourced<Limit> = Limit extends unknown ? Omit<Limit, 'source'> : never;
type Figured = Unsourced<CriticalLimit> | Unsourced<FigureLimit> | CriticalLimit;
type Extra = Partial<
  Pick<
    LimitRow,
    'conditions' | 'isDefault' | 'isPartial' | 'printedOdd' | 'note' | 'validFrom' | 'validUntil' | 'force' | 'known'
  >
>;

/**
 * Rows of one work and one purpose: `from(work, 'cooling')(id, title, paragraph, limit, extra)`. A limit that plans
 * already carry comes with its source and keeps it, so that the plans that use it are found.
 */
export const from =
  (work: Work, purpose: Purpose) =>
  (id: string, title: string, paragraph: string, limit: Figured, extra: Extra = {}): LimitRow => {
    const known = extra.known ?? work.known;
    const { citation, edition, url, validFrom, force } = work;
    const written = { citation: `${citation}, ${paragraph}`, edition, confirmed: known === 'read in the source', url };
    const source = 'source' in limit ? limit.source : written;
    const row = { id, title, purpose, paragraph, force, validFrom, conditions: [], ...extra, known };
    return { ...row, limit: { ...limit, source } };
  };

/** A figure printed in °C alone; a reading in °F is compared with it exactly. */
export const celsius = (value: number): PrintedTemperature => ({ '°C': exactly(value, 2) });

export const atMost = (max: PrintedTemperature) => ({ kind: 'range', measured: 'temperature', max }) as const;
export const atLeast = (min: PrintedTemperature, isStrict = false) =>
  ({ kind: 'range', measured: 'temperature', min, ...(isStrict && { signs: { min: '>' as const } }) }) as const;

/** Rows of a holding table: the temperature, and the time as printed ("4m", "85s"). */
export const held = (rows: readonly (readonly [at: PrintedTemperature, time: string])[]) =>
  ({
    kind: 'dwell',
    rows: rows.map(([at, time]) => ({ at, seconds: printedSeconds(time) })),
    longestGapSeconds: LONGEST_GAP_SECONDS.hold,
  }) as const;

/** A stage of a chill; its time counted from its own start, or in all from the first. */
export const stage = (
  begins: PrintedTemperature,
  to: PrintedTemperature,
  hours: number,
  counted: 'stage' | 'start' = 'stage',
): CoolingStage => ({ from: begins, to, withinSeconds: Math.round(hours * 3600), counted });

/** A stage whose clock starts when cooking ends. */
export const sinceCooking = (to: PrintedTemperature, minutes: number): CoolingStage => ({
  to,
  withinSeconds: minutes * 60,
  counted: 'end of cooking',
});

/** A chill may be shown by its bounds alone: the longest gap is all the time it has. */
export const cooled = (...stages: CoolingStage[]) => {
  const timesOf = (counted: CoolingStage['counted']) =>
    stages.filter((one) => one.counted === counted).map(({ withinSeconds }) => withinSeconds);
  const oneAfterAnother = timesOf('stage').reduce((sum, seconds) => sum + seconds, 0);
  const all = Math.max(oneAfterAnother, ...timesOf('start'), ...timesOf('end of cooking'));
  return { kind: 'cooling', stages, longestGapSeconds: all } as const;
};

type Bounds = { min?: number; max?: number; signs?: StrictSigns; printed?: string; advises?: true };
/** Bounds in the unit itself, with at most three decimals. */
export const figure = (of: string, unit: FigureUnit, { min, max, ...rest }: Bounds) =>
  ({
    kind: 'figure',
    of,
    unit,
    ...(min !== undefined && { min: exactly(min, 3) }),
    ...(max !== undefined && { max: exactly(max, 3) }),
    ...rest,
  }) as const;

/** Ingoing on the meat block, in ppm; three decimals where the source's amount needs them. */
export function ingoingAtMost(substance: RestrictedSubstance, ppm: number, printed: string, countedAs?: 'NO₂' | 'NO₃') {
  const thousandths = exactly(ppm, 3);
  const max = Math.floor(thousandths / 10);
  const exact = thousandths % 10 === 0 ? {} : { maxThousandths: thousandths };
  return { kind: 'concentration', substance, max, ...exact, ...(countedAs && { countedAs }), printed } as const;
}

export const attest = (statement: string) => ({ kind: 'attestation', statement }) as const;

function exactly(value: number, decimals: number): number {
  const count = scaled(value, decimals);
  if (count === undefined) throw new RangeError(`${value} is no printed figure`);
  return count;
}
