import {
  arrivalAtTarget,
  batchByPercent,
  bindersInProduct,
  catalogue,
  citricForAccelerator,
  compositionByAnalysis,
  cureForMeat,
  cureForPickle,
  curveAgainstLimit,
  fermentationByDegreeHours,
  freezingOfPork,
  growthWhileCooling,
  holdAtAnotherTemperature,
  humidityWhileCooking,
  ingoingByMethod,
  lethalityOfCook,
  limitWithInstrument,
  listeriaInThePack,
  lossInDrying,
  nitriteFromNaturalSource,
  percentAndWeight,
  phosphateInPumpedMeat,
  pumpByWeight,
  strengthOfBrine,
  thermometerInBoilingWater,
  timeAtTemperature,
  waterInFinishedProduct,
  waterInFormula,
  type Calculation,
  type CannotCalculate,
  type LimitKind,
  type LimitOf,
} from '@larderbook/haccp';

const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const g = (value: number) => ({ value, unit: 'g' }) as const;
const published = <K extends LimitKind>(kind: K, key: string): LimitOf<K> => {
  const { limit } = catalogue.find((one) => one.key === key) ?? {};
  if (limit?.kind !== kind) throw new Error(`${key} is no ${kind}`);
  return limit as LimitOf<K>;
};
const nitrite = published('concentration', 'nitrite-comminuted');
const table = published('dwell', 'cooked-meat-6.5-log');
const chill = [0, 130, 60, 100, 100, 79].flatMap((_, index, all) =>
  index % 2 === 0 ? [{ minutes: all[index] as number, value: all[index + 1] as number }] : [],
);

/** What each calculator answers to one question that a shop asks. */
export const sampleCalculations: Record<string, Calculation | CannotCalculate> = {
  'a batch': batchByPercent({
    lines: [{ name: 'Salt', percent: 2 }],
    from: { packages: 100, net: g(500), yieldPercent: 80, yieldOn: 'everything' },
  }),
  'percent and weight': percentAndWeight({ base: kg(10), percent: 0.25 }),
  'weight and percent': percentAndWeight({ base: kg(10), weight: g(25) }),
  'water in a formula': waterInFormula({ product: 'fresh pork sausage', others: { value: 102, unit: 'lb' } }),
  binders: bindersInProduct({ product: 'sausage', finished: kg(100), usual: kg(2), isolatedSoy: kg(1) }),
  'curing salt': cureForMeat({ meat: kg(7.3), strength: 6.25, limit: nitrite, scale: g(0.1) }),
  'a coarse scale': cureForMeat({ meat: kg(1), strength: 6.25, limit: nitrite, scale: g(1) }),
  'ingoing, pumped': ingoingByMethod({ method: 'pumped', salt: g(25), strength: 6.25, weight: kg(10), pump: 10 }),
  'a pickle': cureForPickle({ substance: 'sodium nitrite', pickle: kg(10), pump: 10, ppm: 201, strength: 6.25 }),
  'a natural source': nitriteFromNaturalSource({
    natural: g(70),
    meat: kg(10),
    ingredientLot: 'C-17',
    certificate: { ingredientLot: 'C-17', percent: 2, plusMinus: 0.2, as: 'NaNO₂' },
    limit: nitrite,
  }),
  'citric acid': citricForAccelerator({ accelerator: g(5), citric: g(5) }),
  'a brine': strengthOfBrine({ salt: kg(1), water: kg(9) }),
  'a pump': pumpByWeight({ green: kg(10), pumped: kg(11.2) }),
  phosphate: phosphateInPumpedMeat({ pickle: 5, pump: 10 }),
  'a time at a temperature': timeAtTemperature(145, '°F', table, 'Cooked meat'),
  'a curve': curveAgainstLimit(chill, '°F', published('cooling', 'cooling-1999-1'), 'Cooling'),
  'a cook': lethalityOfCook(
    [
      { minutes: 0, value: 60 },
      { minutes: 10, value: 60 },
    ],
    '°C',
    table,
    'Cooked meat',
  ),
  humidity: humidityWhileCooking({ option: 3, cooking: 180, humid: 60, endpoint: 150, unit: '°F' }),
  'another temperature': holdAtAnotherTemperature({ product: 'burgers', value: 65, unit: '°C' }),
  'an arrival': arrivalAtTarget({
    readings: Array.from({ length: 8 }, (_, index) => ({
      minutes: index * 15,
      value: Number((2 + 52.4 * Math.exp((-index * 0.25) / 3.2)).toFixed(2)),
    })),
    unit: '°C',
    way: 'cooling',
    target: 26.7,
    medium: 2,
    withinMinutes: 240,
  }),
  growth: growthWhileCooling({ readings: chill, unit: '°F', species: 'beef', cured: true }),
  fermentation: fermentationByDegreeHours(
    [
      { minutes: 0, value: 80, pH: 5.6 },
      { minutes: 60, value: 80, pH: 5.3 },
    ],
    '°F',
  ),
  drying: lossInDrying({
    weighings: [
      { days: 0, weight: 500 },
      { days: 3, weight: 450 },
    ],
    unit: 'g',
    percent: 30,
  }),
  freezing: freezingOfPork({ what: 'freezer', thickness: { value: 6, unit: 'in' } }, chill, '°F'),
  composition: compositionByAnalysis({ moisture: 60, protein: 14, fat: 25, salt: 2, pH: 4.9, aw: 0.96 }),
  'water in a frankfurter': waterInFinishedProduct({ product: 'frankfurter or bologna', moisture: 56, protein: 11, fat: 29 }),
  'moisture to protein': waterInFinishedProduct({ product: 'semi-dry sausage, shelf stable', moisture: 62, protein: 20 }),
  listeria: listeriaInThePack({ waterPhaseSalt: 3.5, pH: 6.1 }, { celsius: 5, hours: 240 }),
  'an instrument': limitWithInstrument({ figure: 165, error: 1, unit: '°F', side: 'min' }),
  'boiling water': thermometerInBoilingWater({ from: 'weather report', seaLevelHectopascal: 1005, metres: 1600 }, '°C'),
};
