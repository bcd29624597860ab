import { boilingCelsius, icePoint } from '../instruments/boiling-point';
import { boilingWater } from '../instruments/boiling-water';
import type { Air } from '../instruments/station-pressure';
import type { Source } from '../limits/source';
import { sayDegrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CannotCalculate, Fact, Step, Calculation } from './calculation';

const water: Source = {
  citation: 'IAPWS-IF97, region 4: saturation temperature of water',
  edition: 'IAPWS R7-97(2012)',
  confirmed: true,
};
const atmosphere: Source = { citation: 'US Standard Atmosphere', edition: '1976', confirmed: true };

/** What a thermometer should show in boiling water, here and today: by barometer, weather report or height. */
export function thermometerInBoilingWater(air: Air, unit: TemperatureUnit): Calculation | CannotCalculate {
  const boiling = boilingWater(air, unit);
  if (boiling.kind === 'undetermined') return { cannot: `${boiling.because} ${boiling.next}` };
  const { reads, goodTo, hectopascal } = boiling;
  const celsius = boilingCelsius(hectopascal);
  const isMeasured = air.from === 'barometer';
  return {
    title: 'A thermometer in boiling water',
    given: givenOf(air),
    steps: [
      ...pressureStep(air, hectopascal),
      {
        what: 'Boiling point',
        rule: 'saturation temperature of water at that pressure',
        putIn: `T(${hectopascal.toFixed(1)} hPa)`,
        gives: `${(unit === '°C' ? celsius : celsius * 1.8 + 32).toFixed(2)} ${unit}`,
      },
    ],
    results: [
      { what: 'It should show', said: sayDegrees(reads), value: reads.hundredths / 100, unit },
      { what: 'Known to', said: `± ${sayDegrees(goodTo)}`, value: goodTo.hundredths / 100, unit },
      { what: 'In melting ice', said: sayDegrees(icePoint(unit)) },
    ],
    verdicts: [],
    notes: isMeasured
      ? ['The pressure is the one at the place. A weather report gives it reduced to sea level, which is too high.']
      : ['Without a barometer at the place it is no better: the weather moves the pressure. Prefer the ice point.'],
    sources: isMeasured ? [water] : [water, atmosphere],
    cautions: [],
  };
}

function givenOf(air: Air): Fact[] {
  const height = air.metres === undefined ? [] : [{ what: 'Height', said: `${air.metres} m` }];
  if (air.from === 'barometer') return [{ what: 'Pressure', said: `${air.hectopascal} hPa` }, ...height];
  if (air.from === 'height') return height;
  return [{ what: 'Pressure reduced to sea level', said: `${air.seaLevelHectopascal} hPa` }, ...height];
}

function pressureStep(air: Air, hectopascal: number): Step[] {
  if (air.from === 'barometer') return [];
  const [from, atSea] = air.from === 'height' ? ['1013.25 hPa', 1013.25] : ['reduced pressure', air.seaLevelHectopascal];
  return [
    {
      what: 'Pressure at this height',
      rule: `${from} × (1 − 0.0065 × height ÷ 288.15)^5.255876`,
      putIn: `${atSea} hPa × (1 − 0.0065 × ${air.metres} m ÷ 288.15)^5.255876`,
      gives: `${hectopascal.toFixed(1)} hPa`,
    },
  ];
}
