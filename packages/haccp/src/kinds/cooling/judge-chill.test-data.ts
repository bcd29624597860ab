import type { CurveContext } from '../../limits/curve-context';
import { coolingUncured } from '../../limit-sets/fsis-stabilization';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { CoolingLimit } from './cooling-limit';
import { judgeCurve } from '../../limits/judge-curve';

export const MINUTE = 60_000;
/** As a verdict states them. */
export const hours = (count: number) => ({ value: String(count * 3_600_000), unit: 'ms' });

export const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));

/** Of a chill that has ended, unless said otherwise. */
export const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}, limit: CoolingLimit = coolingUncured) =>
  judgeCurve(readings, limit, { ended: true, ...context });
