import { STEPS } from '../quantity/convert-degrees';
import { HOTTEST_POSSIBLE, isUsableReading, type CurveReading } from './curve';

/** 300 °C in hundredths of each unit; warming may not make a possible reading impossible. */
const HOTTEST = { '°C': HOTTEST_POSSIBLE / 9, '°F': HOTTEST_POSSIBLE / 5 + 3200 } as const;

/** Within the thermometer's error, on the common scale: the worse case for chamber and freezer. */
export function warmedBy(error: number, readings: readonly CurveReading[]): readonly CurveReading[] {
  if (error === 0) return readings;
  return readings.map((reading) => {
    if (!isUsableReading(reading)) return reading;
    const { hundredths, unit } = reading.temperature;
    const warmed = Math.min(hundredths + Math.ceil(error / STEPS[unit]), HOTTEST[unit]);
    return { ...reading, temperature: { unit, hundredths: warmed } };
  });
}
