import { above, boundOf, sayBoth } from './bound';
import { decimalText } from './decimal';
import type { Degrees, PrintedTemperature } from './temperature';

/** What a quantity can be at all, whoever measured it: outside nothing is met. */
type Possible<Figure> = { of: string; least: Figure; most: Figure };

const at = (celsius: number, fahrenheit: number): PrintedTemperature => ({
  '°C': celsius * 100,
  '°F': fahrenheit * 100,
});

/** A figure that was slipped by its point or its unit lies outside these. Each is common practice, no source. */
export const POSSIBLE_TEMPERATURE = {
  /** Moist meat boils before it gets hotter, under pressure too; below −30 °C it is frozen through. */
  core: { of: 'the core of a piece', least: at(-30, -22), most: at(110, 230) },
  /** What is kept cold and not frozen. Its warm end only has to leave room for what was forgotten on a stove. */
  cold: { of: 'what is kept cold', least: at(-30, -22), most: at(110, 230) },
  /** A freezer of a shop; cold-store probes end where the air of a blast freezer does. */
  frozen: { of: 'a freezer', least: at(-40, -40), most: at(110, 230) },
  /** Cultures rest below 45 °F; 15 to 45 °C typed as °F lies there, or hardly above. */
  chamber: { of: 'a fermentation chamber', least: at(7.2, 45), most: at(60, 140) },
} as const satisfies Record<string, Possible<PrintedTemperature>>;

export type TemperatureOf = keyof typeof POSSIBLE_TEMPERATURE;

/** Units of numbers that are no temperature and have a range of the possible. */
export type PlainUnit = 'pH' | 'aw' | '%' | 'ratio';

/** In thousandths of the unit. */
export const POSSIBLE_PLAIN: Record<PlainUnit, Possible<number>> = {
  /** From lime juice to the white of an old egg, rounded outward; from memory. */
  pH: { of: 'the pH of food', least: 2000, most: 10_000 },
  /** Water is 1 by definition; the driest that is eaten is freeze-dried, some 0.1. From memory. */
  aw: { of: 'the water activity of food', least: 100, most: 1000 },
  '%': { of: 'a share of the whole', least: 0, most: 100_000 },
  /** Jerky is printed at 0.75; 4 as read and slipped by one place is 0.4. Common practice, no source. */
  ratio: { of: 'the moisture-protein ratio of meat', least: 400, most: 20_000 },
};

/** Why a temperature cannot be what was to be measured; undefined when it can. */
export function impossibleAs(what: TemperatureOf, read: Degrees): string | undefined {
  const { of, least, most } = POSSIBLE_TEMPERATURE[what];
  if (above(read, boundOf(least)) >= 0 && above(read, boundOf(most)) <= 0) return undefined;
  return `${decimalText(read.hundredths, 2)} ${read.unit} cannot be ${of}, which lies between ${sayBoth(least)} and ${sayBoth(most)}.`;
}

export const isPlainUnit = (unit: string): unit is PlainUnit => Object.hasOwn(POSSIBLE_PLAIN, unit);

/**
 * Why a number, in thousandths of its unit, cannot be what was to be measured; undefined when it can, or nothing is
 * known of the unit.
 */
export function impossibleIn(unit: string, thousandths: number | bigint): string | undefined {
  if (!isPlainUnit(unit)) return undefined;
  const { of, least, most } = POSSIBLE_PLAIN[unit];
  if (thousandths >= least && thousandths <= most) return undefined;
  const say = (figure: number | bigint) => decimalText(figure, 3);
  return `${say(thousandths)} cannot be ${of}, which lies between ${say(least)} and ${say(most)}.`;
}
