import { boundOf } from '../../quantity/bound';
import { isLogs } from '../../quantity/is-logs';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { LethalityLimit } from './lethality-limit';
import { sayLethalityLimit } from './say-lethality-limit';

export const lethality: Kind<LethalityLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: false,
  unitsRead: () => DEGREES,
  say: sayLethalityLimit,
  fault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};

/** Well below every set carried here; with less, any warm core would do at once. Common practice, no source. */
const LEAST_D_MINUTES = 0.0001;
const LEAST_Z_CELSIUS = 2;

function fault({ set, log10, floor, authority }: LethalityLimit): string | undefined {
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
