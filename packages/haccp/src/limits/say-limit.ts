import { kindOf } from '../kinds/registry';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CriticalLimit } from './limit';

/** A critical limit in one line, as its source prints it. Curves are said in the unit of the readings. */
export const sayLimit = (limit: CriticalLimit, unit: TemperatureUnit = '°F'): string => kindOf(limit).say(limit, unit);
