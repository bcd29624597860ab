import { boilingCelsius, standardPressure } from '../instruments/boiling-point';
import type { Source } from '../limits/limit';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CannotWork, Working } from './working';

const water: Source = {
  citation: 'IAPWS-IF97, region 4: saturation temperature of water',
  edition: 'IAPWS R7-97(2012)',
  confirmed: true,
};
const atmosphere: Source = { citation: 'US Standard Atmosphere', edition: '1976', confirmed: true };

/** From a barometer (hPa, at the place) or else from the height of the place (m). */
export type BoilingAt = { hectopascal?: number; metres?: number };

/** What a thermometer should show in boiling water, here and today. */
export function thermometerInBoilingWater(at: BoilingAt, unit: TemperatureUnit): Working | CannotWork {
  const { hectopascal, metres = NaN } = at;
  const measured = hectopascal !== undefined;
  const pressure = hectopascal ?? standardPressure(metres);
  if (!(pressure >= 300 && pressure <= 1100)) {
    return { cannot: 'Give the pressure of the air here, 300 to 1100 hPa, or the height of the place.' };
  }
  const celsius = boilingCelsius(pressure);
  const say = (decimals: number) => `${(unit === '°C' ? celsius : celsius * 1.8 + 32).toFixed(decimals)} ${unit}`;
  const height = measured
    ? []
    : [
        {
          what: 'Pressure at this height',
          rule: '1013.25 hPa × (1 − 0.0065 × height ÷ 288.15)^5.255876',
          putIn: `1013.25 hPa × (1 − 0.0065 × ${metres} m ÷ 288.15)^5.255876`,
          gives: `${pressure.toFixed(1)} hPa`,
        },
      ];
  return {
    title: 'A thermometer in boiling water',
    given: [measured ? { what: 'Pressure', said: `${pressure} hPa` } : { what: 'Height', said: `${metres} m` }],
    steps: [
      ...height,
      {
        what: 'Boiling point',
        rule: 'saturation temperature of water at that pressure',
        putIn: `T(${pressure.toFixed(1)} hPa)`,
        gives: say(2),
      },
    ],
    results: [
      { what: 'It should show', said: say(1), value: unit === '°C' ? celsius : celsius * 1.8 + 32, unit },
      { what: 'In melting ice', said: unit === '°C' ? '0 °C' : '32 °F' },
    ],
    verdicts: [],
    notes: measured
      ? ['The pressure is the one at the place. A weather report gives it reduced to sea level, which is too high.']
      : ['From the height alone it is good to about ± 0.6 °C (± 1 °F): weather moves the pressure. Prefer the ice point.'],
    sources: measured ? [water] : [water, atmosphere],
    cautions: [],
  };
}
