import { boundOf } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { PrintedTemperature } from '../quantity/temperature';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { DwellRow } from '../kinds/dwell/dwell-limit';
import type { LimitRow } from './limit-set';
import { temperaturesIn } from './temperatures-in';

/**
 * Tables that contradict themselves: a hotter row that takes longer, a stage that begins hotter than the last ended.
 */
export function faultsOfTable(limit: LimitRow['limit']): string[] {
  switch (limit.kind) {
    case 'dwell':
      return [...faultsOfRows(limit.rows), ...faultOfGap(limit.longestGapSeconds)];
    case 'cooling':
      return [...faultsOfStages(limit), ...faultOfGap(limit.longestGapSeconds)];
    case 'bandTime':
      return [...(limit.maxSeconds > 0 ? [] : ['The band has no time.']), ...faultOfGap(limit.longestGapSeconds)];
    default:
      return [];
  }
}

function faultsOfRows(rows: readonly DwellRow[]): string[] {
  return rows.flatMap((row, index) => {
    const before = rows[index - 1];
    if (!before) return [];
    const isHotter = (['°F', '°C'] as const).every((unit) => boundOf(row.at)[unit] > boundOf(before.at)[unit]);
    return [
      ...(isHotter ? [] : [`Row ${index + 1} is not hotter than the one before.`]),
      ...(row.seconds <= before.seconds ? [] : [`Row ${index + 1} takes longer than the colder one before.`]),
    ];
  });
}

function faultsOfStages({ stages, startWithinSeconds = 1 }: CoolingLimit): string[] {
  const isTimed = startWithinSeconds > 0 && stages.every(({ withinSeconds }) => withinSeconds > 0);
  const chains = stages.every(({ from }, index) => {
    const before = stages[index - 1];
    return !before || !from || (boundOf(from)['°F'] <= boundOf(before.to)['°F'] && boundOf(from)['°C'] <= boundOf(before.to)['°C']);
  });
  return [
    ...(isTimed && stages.length > 0 ? [] : ['A stage of the cooling has no time.']),
    ...(chains ? [] : ['A stage of the cooling begins hotter than the one before ended.']),
  ];
}

const faultOfGap = (seconds: number): string[] => (seconds > 0 ? [] : ['The longest tolerated gap is missing.']);

/**
 * Figures printed in both units must mean the same temperature within the rounding of the °C, unless the source is
 * known to print them so; a pair named as odd that is not is a slip as well.
 */
export function faultsOfPairs(row: LimitRow): string[] {
  const figures = temperaturesIn(row);
  const half = halfStepOf(figures);
  const odd = row.printedOdd ?? [];
  const isNamed = (figure: PrintedTemperature) => odd.some((known) => known['°F'] === figure['°F'] && known['°C'] === figure['°C']);
  const isOff = (figure: PrintedTemperature) => gapBetweenUnits(figure) > half;
  return [
    ...figures.filter((figure) => isOff(figure) && !isNamed(figure)).map((figure) => `${say(figure)} do not agree.`),
    ...odd.filter((figure) => !isOff(figure)).map((figure) => `${say(figure)} is named as odd and is not.`),
  ];
}

/** A row prints all its °C to the same decimals: half a degree or half a tenth, in ninths of a hundredth. */
function halfStepOf(figures: readonly PrintedTemperature[]): number {
  const inTenths = figures.some(({ '°C': celsius }) => celsius !== undefined && celsius % 100 !== 0);
  return inTenths ? 45 : 450;
}

function gapBetweenUnits({ '°F': fahrenheit, '°C': celsius }: PrintedTemperature): number {
  if (fahrenheit === undefined || celsius === undefined) return 0;
  const [one, other] = [fahrenheit, celsius];
  return Math.abs(onCommonScale({ hundredths: one, unit: '°F' }) - onCommonScale({ hundredths: other, unit: '°C' }));
}

const say = ({ '°F': fahrenheit = NaN, '°C': celsius = NaN }: PrintedTemperature): string =>
  `${fahrenheit / 100} °F and ${celsius / 100} °C`;
