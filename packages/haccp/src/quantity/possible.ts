import { above, boundOf } from './bound';
import { amountOf, degreesOf, printedIn } from './quantities';
import type { Quantity } from './quantity';
import type { Degrees, PrintedTemperature } from './temperature';

/** Outside it no limit is met. */
type Possible<Figure> = { least: Figure; most: Figure };

const at = (celsius: number, fahrenheit: number): PrintedTemperature => ({
  '°C': celsius * 100,
  '°F': fahrenheit * 100,
});

/** A slipped point or a wrong unit lies outside. Each is common practice, no source. */
export const POSSIBLE_TEMPERATURE = {
  /** Moist meat boils before it gets hotter, under pressure too; below −30 °C it is frozen through. */
  core: { least: at(-30, -22), most: at(110, 230) },
  /** Kept cold and not frozen; the warm end has room for what was forgotten on a stove. */
  cold: { least: at(-30, -22), most: at(110, 230) },
  /** A shop's freezer; cold-store probes and the air of a blast freezer go no lower. */
  frozen: { least: at(-40, -40), most: at(110, 230) },
  /** Cultures rest below 45 °F; 15 to 45 °C typed as °F lies there or hardly above. */
  chamber: { least: at(7.2, 45), most: at(60, 140) },
  /** Kitchen and smokehouse ovens end below it; 250.0 typed without its point lies above. */
  oven: { least: at(0, 32), most: at(300, 572) },
} as const satisfies Record<string, Possible<PrintedTemperature>>;

export type TemperatureOf = keyof typeof POSSIBLE_TEMPERATURE;

export type PlainUnit = 'pH' | 'aw' | '%' | 'ratio';

export type PossibleKind = TemperatureOf | PlainUnit;

/** In thousandths of the unit. */
export const POSSIBLE_PLAIN: Record<PlainUnit, Possible<number>> = {
  /** From lime juice to the white of an old egg, rounded outward; from memory. */
  pH: { least: 2000, most: 10_000 },
  /** Water is 1 by definition; the driest eaten is freeze-dried, some 0.1. From memory. */
  aw: { least: 100, most: 1000 },
  '%': { least: 0, most: 100_000 },
  /** Jerky is printed at 0.75; a 4 whose point slipped by one place reads 0.4 and lies outside. Common practice, no source. */
  ratio: { least: 401, most: 20_000 },
};

export type Impossible = { value: Quantity; of: PossibleKind; lowest: Quantity; highest: Quantity };

export function impossibleAs(what: TemperatureOf, read: Degrees): Impossible | undefined {
  const { least, most } = POSSIBLE_TEMPERATURE[what];
  if (above(read, boundOf(least)) >= 0 && above(read, boundOf(most)) <= 0) return undefined;
  return { value: degreesOf(read), of: what, lowest: printedIn(least, read.unit), highest: printedIn(most, read.unit) };
}

export const isPlainUnit = (unit: string): unit is PlainUnit => Object.hasOwn(POSSIBLE_PLAIN, unit);

/** Undefined too where nothing is known of the unit. */
export function impossibleIn(unit: string, thousandths: number | bigint): Impossible | undefined {
  if (!isPlainUnit(unit)) return undefined;
  const { least, most } = POSSIBLE_PLAIN[unit];
  if (thousandths >= least && thousandths <= most) return undefined;
  return { value: amountOf(thousandths, unit), of: unit, lowest: amountOf(least, unit), highest: amountOf(most, unit) };
}
