import { boilingCelsius, icePoint } from '../instruments/boiling-point';
import { boilingWater } from '../instruments/boiling-water';
import type { Air } from '../instruments/station-pressure';
import { coded } from '../limits/coded';
import type { Source } from '../limits/source';
import { sum } from '../limits/line-part';
import { asGiven, degreesOf } from '../quantity/quantities';
import type { Quantity } from '../quantity/quantity';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation, Fact, Step } from './calculation';
import type { CannotCalculate } from './cannot';

const water: Source = {
  citation: 'IAPWS-IF97, region 4: saturation temperature of water',
  edition: 'IAPWS R7-97(2012)',
  confirmed: true,
};
const atmosphere: Source = { citation: 'US Standard Atmosphere', edition: '1976', confirmed: true };

export function thermometerInBoilingWater(air: Air, unit: TemperatureUnit): Calculation | CannotCalculate {
  const boiling = boilingWater(air, unit);
  if (boiling.kind === 'undetermined') return { cannot: boiling.why };
  const { reads, goodTo, hectopascal } = boiling;
  const celsius = boilingCelsius(hectopascal);
  const isMeasured = air.from === 'barometer';
  return {
    given: givenOf(air),
    steps: [
      ...pressureStep(air, hectopascal),
      {
        what: coded('boiling-point'),
        rule: coded('boiling-point.rule'),
        putIn: sum`T(${pressure(hectopascal.toFixed(1))})`,
        gives: { value: (unit === '°C' ? celsius : celsius * 1.8 + 32).toFixed(2), unit },
      },
    ],
    results: [
      { what: coded('it-should-show'), is: degreesOf(reads), value: reads.hundredths / 100, unit },
      { what: coded('known-to'), is: coded('plus-minus', { figure: degreesOf(goodTo) }), value: goodTo.hundredths / 100, unit },
      { what: coded('in-melting-ice'), is: degreesOf(icePoint(unit)) },
    ],
    judged: [],
    notes: [coded(isMeasured ? 'pressure-at-the-place' : 'without-barometer')],
    sources: isMeasured ? [water] : [water, atmosphere],
    grounds: [],
    cautions: [],
  };
}

function givenOf(air: Air): Fact[] {
  const height: Fact[] = air.metres === undefined ? [] : [{ what: coded('height'), is: metres(air.metres) }];
  if (air.from === 'barometer') return [{ what: coded('pressure'), is: pressure(air.hectopascal) }, ...height];
  if (air.from === 'height') return height;
  return [{ what: coded('pressure-at-sea-level'), is: pressure(air.seaLevelHectopascal) }, ...height];
}

function pressureStep(air: Air, hectopascal: number): Step[] {
  if (air.from === 'barometer') return [];
  const atSea = air.from === 'height' ? 1013.25 : air.seaLevelHectopascal;
  return [
    {
      what: coded('pressure-at-this-height'),
      rule: coded(air.from === 'height' ? 'standard-pressure.rule' : 'reduced-pressure.rule'),
      putIn: sum`${pressure(atSea)} × (1 − 0.0065 × ${metres(air.metres)} ÷ 288.15)^5.255876`,
      gives: pressure(hectopascal.toFixed(1)),
    },
  ];
}

const pressure = (value: number | string): Quantity => ({ value: String(value), unit: 'hPa' });
const metres = (value: number): Quantity => asGiven(value, 'm');
