export type TemperatureUnit = '°C' | '°F';

/** Hundredths of a degree, in the unit of the instrument. */
export type Degrees = { hundredths: number; unit: TemperatureUnit };

/** Hundredths of a degree, in each unit the source prints. */
export type PrintedTemperature = { '°F'?: number; '°C'?: number };

export const DEGREES: readonly TemperatureUnit[] = ['°F', '°C'];

export const isTemperatureUnit = (unit: string): unit is TemperatureUnit => (DEGREES as readonly string[]).includes(unit);
