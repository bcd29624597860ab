import { formatPrinted } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { LethalityLimit } from './lethality-limit';

/** "6.5 log" */
export const sayTarget = ({ log10 }: LethalityLimit): string => `${decimalText(log10, 2)} log`;

/** "≥ 6.5 log (Salmonella, by the meat table: D 1.714 min at 60 °C, z 5.56 °C), counted from 130 °F" */
export function sayLethalityLimit(limit: LethalityLimit, unit: TemperatureUnit): string {
  const { name, minutesPerLog, referenceCelsius, zCelsius } = limit.set;
  const law = `D ${short(minutesPerLog)} min at ${referenceCelsius} °C, z ${zCelsius} °C`;
  return `≥ ${sayTarget(limit)} (${name}: ${law}), counted from ${formatPrinted(limit.floor, unit)}`;
}

const short = (minutes: number): string => String(Number(minutes.toPrecision(4)));
