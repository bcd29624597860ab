import type { LimitFault } from '../../limits/limit-fault-code';
import { boundOf } from '../../quantity/bound';
import { isLogs } from '../../quantity/is-logs';
import { asGiven } from '../../quantity/quantities';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { LethalityLimit } from './lethality-limit';

export const lethality: Kind<LethalityLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: false,
  unitsRead: () => DEGREES,
  fault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};

/** Well below every set carried here; with less, any warm core would do at once. Common practice, no source. */
const LEAST_D_MINUTES = 0.0001;
const LEAST_Z_CELSIUS = 2;

function fault({ set, log10, floor, authority }: LethalityLimit): LimitFault | undefined {
  const { minutesPerLog, referenceCelsius, zCelsius } = set;
  if (!isLogs(log10)) return { code: 'kill-target-unusable' };
  if (!(minutesPerLog > 0 && zCelsius > 0 && Number.isFinite(minutesPerLog * zCelsius * referenceCelsius)))
    return { code: 'kill-law-unusable' };
  if (minutesPerLog < LEAST_D_MINUTES || zCelsius < LEAST_Z_CELSIUS)
    return { code: 'kill-law-slipped', figures: { d: asGiven(LEAST_D_MINUTES, 'min'), z: asGiven(LEAST_Z_CELSIUS, '°C') } };
  if (set.use === 'mean') return { code: 'kill-by-mean' };
  if (!Number.isFinite(boundOf(floor)['°C'])) return { code: 'kill-floor-unusable' };
  return authority.trim() ? undefined : { code: 'kill-authority-missing' };
}
