import type { CoolingStage } from '../kinds/cooling/cooling-limit';
import type { StrictSigns } from '../limits/source';
import { scaled } from '../quantity/decimal';
import type { PrintedTemperature } from '../quantity/temperature';

const SECONDS = { h: 3600, min: 60, s: 1 };

/** Exact. Throws a RangeError where the number has more decimals. */
export function exactly(text: string | number, decimals: number): number {
  const count = scaled(Number(text), decimals);
  if (count === undefined) throw new RangeError(`${text} is no printed figure`);
  return count;
}

/** "41 °F (5 °C)", "4 °C", "120 °F": only printed units. */
export function readTemperature(text: string): PrintedTemperature {
  const [, fahrenheit, , beside, alone] = matched(/^(?:(-?[\d.]+) °F( \((-?[\d.]+) °C\))?|(-?[\d.]+) °C)$/, text);
  const celsius = beside ?? alone;
  return {
    ...(fahrenheit !== undefined && { '°F': exactly(fahrenheit, 2) }),
    ...(celsius !== undefined && { '°C': exactly(celsius, 2) }),
  };
}

/** Exact: "63.3 min" is 3798, "16.9 s" is 16.9. */
export function readSeconds(text: string): number {
  const [, figure, unit] = matched(/^([\d.]+) (h|min|s)$/, text);
  return (exactly(figure as string, 3) * SECONDS[unit as keyof typeof SECONDS]) / 1000;
}

export type Bounds<Value> = { min?: Value; max?: Value; signs?: StrictSigns };

/** "≤ 30 %", "≥ 40 ppm and ≤ 80 ppm", "< 4.4 pH"; `read` reads a bound. */
export function readBounds<Value>(cell: string, read: (text: string) => Value): Bounds<Value> {
  const bounds: Bounds<Value> = {};
  for (const part of cell.split(' and ')) {
    const [, sign, text] = matched(/^([≤≥<>]) (.+)$/, part);
    bounds[sign === '≥' || sign === '>' ? 'min' : 'max'] = read(text as string);
    if (sign === '>') bounds.signs = { ...bounds.signs, min: '>' };
    if (sign === '<') bounds.signs = { ...bounds.signs, max: '<' };
  }
  return bounds;
}

/** "60 °C to 21 °C in 2 h", "21 °C to 5 °C in 6 h from the start", "end of cooking to 3 °C in 150 min" */
export function readStage(text: string): CoolingStage {
  const [, from, to, time, inAll] = matched(/^(.+) to (.+) in (\S+ \S+)( from the start)?$/, text);
  const ends = { to: readTemperature(to as string), withinSeconds: readSeconds(time as string) };
  if (from === 'end of cooking') return { ...ends, counted: 'end of cooking' };
  return { ...ends, from: readTemperature(from as string), counted: inAll ? 'start' : 'stage' };
}

export function matched(pattern: RegExp, text: string): RegExpExecArray {
  const match = pattern.exec(text);
  if (!match) throw new RangeError(`"${text}" is not written as the sets write it`);
  return match;
}
