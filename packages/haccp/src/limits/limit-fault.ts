import { fermentationFault } from '../kinds/degree-hours/fermentation-fault';
import { figureFault } from '../kinds/figure/figure-limit';
import { freezingFault } from '../kinds/freezing/judge-freezing';
import { boundOf, type Bound } from '../quantity/bound';
import { partsPerMillion } from '../quantity/percent';
import type { PrintedTemperature } from '../quantity/temperature';
import { isCountable } from '../kinds/concentration/counted-as';
import { mostThousandths } from '../kinds/concentration/dose-for';
import { rowsOf } from '../kinds/dwell/dwell-rows';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import type { CriticalLimit } from './limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import type { RangeLimit } from '../kinds/range/range-limit';

/** One sentence on why nothing could ever be judged against a limit; undefined when it is sound. */
export function limitFault(limit: CriticalLimit): string | undefined {
  switch (limit.kind) {
    case 'range':
      return rangeFault(limit);
    case 'concentration':
      return concentrationFault(limit);
    case 'dwell':
      return rowsOf(limit) ? undefined : 'The table of holding times is empty or its rows contradict each other.';
    case 'cooling':
      return limit.stages.every(({ from, to }) => !from || isColder(to, from))
        ? undefined
        : 'A stage of the cooling does not end colder than it begins.';
    case 'bandTime':
      return isColder(limit.from, limit.to) ? undefined : 'The band does not end warmer than it begins.';
    case 'lethality':
      return lethalityFault(limit);
    case 'growth':
      return isLogs(limit.log10) ? undefined : 'The growth allowed is no whole number of hundredths of a log above zero.';
    case 'degreeHours':
      return fermentationFault(limit);
    case 'weightLoss':
      return partsPerMillion(limit.percent) ? undefined : 'The loss asked for is no percentage above zero.';
    case 'freezing':
      return freezingFault(limit);
    case 'figure':
      return figureFault(limit);
    case 'attestation':
      return undefined;
  }
}

/** Well below every set carried here; with less, any warm core would do at once. Common practice, no source. */
const LEAST_D_MINUTES = 0.0001;
const LEAST_Z_CELSIUS = 2;

const isLogs = (hundredths: number): boolean => Number.isSafeInteger(hundredths) && hundredths > 0;

function lethalityFault({ set, log10, floor, authority }: LethalityLimit): string | undefined {
  const { minutesPerLog, referenceCelsius, zCelsius } = set;
  if (!isLogs(log10)) return 'The target is no whole number of hundredths of a log above zero.';
  if (!(minutesPerLog > 0 && zCelsius > 0 && Number.isFinite(minutesPerLog * zCelsius * referenceCelsius)))
    return 'D, z or the reference temperature is no usable number.';
  if (minutesPerLog < LEAST_D_MINUTES || zCelsius < LEAST_Z_CELSIUS)
    return `D is below ${LEAST_D_MINUTES} min or z below ${LEAST_Z_CELSIUS} °C: look for a slipped decimal point.`;
  if (set.use === 'mean') return 'A mean of many studies is no basis for a decision: half of all cases resist longer.';
  if (!Number.isFinite(boundOf(floor)['°C'])) return 'The temperature from which kill is counted is no usable number.';
  return authority.trim() ? undefined : 'Name the process authority that supports it, and where the letter is filed.';
}

function rangeFault({ measured, min, max }: RangeLimit): string | undefined {
  const bounds = [min, max].filter((bound) => bound !== undefined);
  if (bounds.length === 0) return 'The range has neither a least nor a most.';
  const isTemperature = measured === 'temperature';
  if (bounds.some((bound) => (typeof bound === 'object') !== isTemperature)) {
    return isTemperature ? 'A range of temperatures needs its figures in °F or °C.' : 'Only a temperature has °F or °C.';
  }
  if (bounds.some((bound) => typeof bound === 'number' && !Number.isSafeInteger(bound)))
    return 'A figure of the range is no usable number.';
  if (typeof min === 'number' && typeof max === 'number' && min > max) return 'The least is more than the most.';
  if (typeof min === 'object' && typeof max === 'object' && isColder(max, min)) return 'The least is more than the most.';
  return undefined;
}

function concentrationFault(limit: ConcentrationLimit): string | undefined {
  const figures = [limit.min, limit.max, limit.maxThousandths].filter((figure) => figure !== undefined);
  if (figures.some((figure) => !Number.isSafeInteger(figure) || figure < 0))
    return 'A figure of the concentration is no whole number above zero.';
  if (!isCountable(limit)) return `${limit.substance} holds no ${limit.countedAs} to count.`;
  const most = mostThousandths(limit);
  if (limit.min === undefined && most === undefined) return 'The concentration has neither a least nor a most.';
  if (limit.min !== undefined && most !== undefined && BigInt(limit.min) * 10n > most) return 'The least is more than the most.';
  return undefined;
}

/** Colder in both units, so that a reading in either is judged the same way. */
function isColder(one: PrintedTemperature, other: PrintedTemperature): boolean {
  const [a, b]: [Bound, Bound] = [boundOf(one), boundOf(other)];
  return a['°F'] < b['°F'] && a['°C'] < b['°C'];
}
