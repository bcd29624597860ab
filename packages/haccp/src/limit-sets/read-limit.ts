import type { FigureLimit, FigureUnit } from '../kinds/figure/figure-limit';
import type { CoolingStage } from '../kinds/cooling/cooling-limit';
import type { CountedAs } from '../kinds/concentration/concentration-limit';
import type { CriticalLimit } from '../limits/limit';
import type { RestrictedSubstance } from '../formula/restricted-substance';
import type { Source } from '../limits/source';
import { readHeld } from './held-rows';
import { exactly, matched, readBounds, readSeconds, readStage, readTemperature } from './read-cell';
import { cellOf, type Cells, type SheetHead } from './set-file';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

type Published = CriticalLimit | FigureLimit;
type Unsourced<Limit> = Limit extends unknown ? Omit<Limit, 'source'> : never;
type Read = { cells: Cells; set: SheetHead; statement: string };

const readers: Record<string, (row: Read) => Unsourced<Published>> = {
  range: ({ cells }) => ({ kind: 'range', measured: 'temperature', ...readBounds(cellOf(cells, 'figure'), readTemperature) }),
  figure: ({ cells }) => readFigure(cells),
  concentration: ({ cells }) => readIngoing(cells),
  dwell: ({ cells, set }) => ({
    kind: 'dwell',
    rows: readHeld(cellOf(cells, 'figure'), set.holds),
    longestGapSeconds: LONGEST_GAP_SECONDS.hold,
  }),
  cooling: ({ cells }) => readCooling(cells),
  bandTime: ({ cells }) => {
    const { from = {}, to, withinSeconds } = readStage(cellOf(cells, 'figure'));
    return { kind: 'bandTime', from, to, maxSeconds: withinSeconds, longestGapSeconds: LONGEST_GAP_SECONDS.comeUp };
  },
  attestation: ({ statement }) => ({ kind: 'attestation', statement }),
};

/** Throws a RangeError on a cell not written as the sets write it. */
export function readLimit(cells: Cells, set: SheetHead, statement = ''): Published {
  const read = readers[cellOf(cells, 'kind')];
  const work = set.works?.[cellOf(cells, 'work')];
  if (!read || !work) throw new RangeError(`The row ${cells.id} of ${set.id} names no kind or work that there is`);
  const place = cellOf(cells, 'cited') || cellOf(cells, 'where');
  const source: Source = {
    citation: `${work.citation}, ${place}`,
    edition: work.edition,
    confirmed: cellOf(cells, 'known') === 'read in the source',
    ...(work.url && { url: work.url }),
  };
  return { ...read({ cells, set, statement }), source };
}

/** At most three decimals: "≤ 30 %", "≥ 40 ppm, advised". */
function readFigure(cells: Cells): Omit<FigureLimit, 'source'> {
  const printed = cellOf(cells, 'printed');
  const [bounds, advised] = cellOf(cells, 'figure').split(', ') as [string, string?];
  return {
    kind: 'figure',
    of: cellOf(cells, 'of'),
    unit: bounds.slice(bounds.lastIndexOf(' ') + 1) as FigureUnit,
    ...readBounds(bounds, (text) => exactly(matched(/^([\d.]+) \S+$/, text)[1] as string, 3)),
    ...(printed && { printed }),
    ...(advised && { advises: true }),
  };
}

/** On the meat block, in ppm; three decimals where the source's amount needs them. "≤ 80 ppm as NO₂" */
function readIngoing(cells: Cells): Unsourced<Published> {
  const [, ppm, countedAs] = matched(/^≤ ([\d.]+) ppm(?: as (NO[₂₃]))?$/, cellOf(cells, 'figure'));
  const thousandths = exactly(ppm as string, 3);
  return {
    kind: 'concentration',
    substance: cellOf(cells, 'of') as RestrictedSubstance,
    max: Math.floor(thousandths / 10),
    ...(thousandths % 10 !== 0 && { maxThousandths: thousandths }),
    ...(countedAs && { countedAs: countedAs as CountedAs }),
    printed: cellOf(cells, 'printed'),
  };
}

function readCooling(cells: Cells): Unsourced<Published> {
  const stages = cellOf(cells, 'figure').split('; ').map(readStage);
  const [begun, gap] = [cellOf(cells, 'begun'), cellOf(cells, 'gap')];
  return {
    kind: 'cooling',
    stages,
    ...(begun && { startWithinSeconds: readSeconds(begun) }),
    longestGapSeconds: gap ? readSeconds(gap) : allTheTime(stages),
  };
}

/** A chill may be shown by its bounds alone: no gap up to all its time is too long. */
function allTheTime(stages: readonly CoolingStage[]): number {
  const timesOf = (counted: CoolingStage['counted']) =>
    stages.filter((stage) => stage.counted === counted).map(({ withinSeconds }) => withinSeconds);
  const oneAfterAnother = timesOf('stage').reduce((sum, seconds) => sum + seconds, 0);
  return Math.max(oneAfterAnother, ...timesOf('start'), ...timesOf('end of cooking'));
}
