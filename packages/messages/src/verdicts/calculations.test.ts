import type { Calculation } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { allWords, wordsTogether } from '../all';
import type { Language } from '../languages';
import { limitTeller } from '../limits/limit-teller';
import { lines, type SayLine } from './lines';
import { sampleCalculations } from './sample-calculations.test-data';
import { teller } from './tell';

/** Everything that a calculation tells, by what it is. */
function toldIn(language: Language, calculation: Calculation) {
  const voice = { language, timeZone: 'UTC', timeStyle: 'US' } as const;
  const { tell, tellRemark } = teller({ verdicts: allWords.verdicts[language], limits: allWords.limits[language] }, voice);
  const { sayLimit } = limitTeller(allWords.limits[language], voice);
  const line = lines(wordsTogether('workings', 'calculations')[language], voice, { tellRemark, sayLimit });
  const { given, steps, results, judged, notes, grounds, cautions } = calculation;
  const told = judged.map(({ verdict, limit }) => tell(verdict, limit));
  const says = (part: Parameters<SayLine>[0]) => line(part, told[0]);
  return {
    given: given.map(({ what, is }) => `${says(what)}: ${says(is)}`),
    steps: steps.map(({ what, rule, putIn, gives }) => `${says(what)}: ${says(rule)} | ${says(putIn)} | ${says(gives)}`),
    results: results.map(({ what, is }) => `${says(what)}: ${says(is)}`),
    rest: [...notes, ...grounds, ...cautions].map(says),
  };
}

const sample = (name: string): Calculation => {
  const outcome = sampleCalculations[name];
  if (!outcome || 'cannot' in outcome) throw new Error(`${name} was not worked out`);
  return outcome;
};

test.each<[string, string[], string[], string[]]>([
  [
    'a batch',
    ['Packages: 100 of 500 g', 'Yield: 80 % of everything that goes in'],
    [
      'Trimmed meat: packages × net weight ÷ yield ÷ (100 % + lines) | 100 × 500 g ÷ 80 % ÷ (100 % + 2 %) | 61,274.51 g',
      'Salt: meat × percent | 61,274.51 g × 2 % | 1,225.49 g',
    ],
    ['Trimmed meat: 61,274.51 g', 'Salt: 1,225.49 g', 'All together: 62,500 g'],
  ],
  [
    'percent and weight',
    ['Counted on: 10 kg', 'Percentage: 0.25 %'],
    ['Weight: base × percent | 10,000 g × 0.25 % | 25 g'],
    ['Weight: 25 g'],
  ],
  [
    'weight and percent',
    ['Counted on: 10 kg', 'Weight: 25 g'],
    ['Percentage: 100 × weight ÷ base, to four decimals | 100 × 25 g ÷ 10,000 g | 0.25 %'],
    ['Percentage: 0.25 %'],
  ],
  [
    'water in a formula',
    ['Product: fresh pork sausage', 'All other ingredients: 102 lb'],
    ['Most water: other ingredients × p ÷ (100 % − p) | 102 lb × 3 % ÷ (100 % − 3 %) | 3.154 lb'],
    ['Water and ice, at most: 3.154 lb', 'All together: 105.155 lb'],
  ],
  [
    'binders',
    ['Product: sausage', 'Finished weight: 100 kg'],
    [
      'Counted together: 100 × (usual binders + 1.75 × isolated soy protein and caseinate) ÷ finished weight | 100 × (2,000 g + 1.75 × 1,000 g) ÷ 100,000 g | 3.75 %',
    ],
    ['Counted together: 3.75 %'],
  ],
  [
    'curing salt',
    ['Meat block: 7.3 kg', 'sodium nitrite in the curing salt: 6.25 %'],
    ['At most: meat block × ppm ÷ 1,000,000 ÷ content of the curing salt | 7,300 g × 156.25 ppm ÷ 1,000,000 ÷ 6.25 % | 18.25 g'],
    ['At most: 18.25 g', 'On this scale: what shows 0.1 g to 18.2 g is surely within: 0.05 g of doubt on 18.25 g is 0.274 %, within 5 %.'],
  ],
  [
    'a coarse scale',
    ['Meat block: 1 kg', 'sodium nitrite in the curing salt: 6.25 %'],
    ['At most: meat block × ppm ÷ 1,000,000 ÷ content of the curing salt | 1,000 g × 156.25 ppm ÷ 1,000,000 ÷ 6.25 % | 2.5 g'],
    [
      'At most: 2.5 g',
      'This scale is too coarse: what shows 1 g to 2 g is surely within: 0.5 g of doubt on 2.5 g is 20 %, more than 5 %. Take a finer scale.',
    ],
  ],
  [
    'ingoing, pumped',
    ['Method: pumped', 'Curing salt: 25 g of 6.25 %'],
    [
      'Substance: curing salt × content | 25 g × 6.25 % | 1.5625 g',
      'Ingoing: substance × pump % × 1,000,000 ÷ pickle | 1.5625 g × 10 % × 1,000,000 ÷ 10,000 g | 15.63 ppm',
    ],
    ['Ingoing: 15.63 ppm', 'Counted on: green weight, by the pickle pumped in'],
  ],
  [
    'a pickle',
    ['Pickle: 10 kg', 'Pumped in or picked up: 10 % of the green weight'],
    [
      'Substance: ppm × pickle ÷ pump % ÷ 1,000,000 | 201 × 10,000 g ÷ 10 % ÷ 1,000,000 | 20.1 g',
      'To weigh into the pickle: substance ÷ content | 20.1 g ÷ 6.25 % | 321.6 g',
    ],
    ['To weigh into the pickle: 321.6 g', 'Ingoing at this pump: 201 ppm'],
  ],
  [
    'a natural source',
    ['Natural source: 70 g of lot C-17', 'By its certificate: 2 % ± 0.2 % (NaNO₂)'],
    [
      'Sodium nitrite brought: weight × (content ± spread) | 70 g × (2 % ± 0.2 %) | 1.26 g to 1.54 g',
      'Ingoing: sodium nitrite × 1,000,000 ÷ meat block | (1.26 g to 1.54 g) × 1,000,000 ÷ 10,000 g | 126 ppm to 154 ppm',
    ],
    ['At least: 126 ppm', 'At most: 154 ppm'],
  ],
  [
    'citric acid',
    ['Ascorbate or erythorbate: 5 g', 'Citric acid or sodium citrate: 5 g'],
    ['Replaced: 100 × citric ÷ (accelerator + citric) | 100 × 5 g ÷ 10 g | 50 %'],
    ['Replaced: 50 %'],
  ],
  [
    'a brine',
    ['Salt: 1 kg', 'Water: 9 kg'],
    ['Strength: 100 × salt ÷ (salt + water) | 100 × 1,000 g ÷ 10,000 g | 10 %'],
    ['Strength by weight: 10 %'],
  ],
  [
    'a pump',
    ['Green weight: 10 kg', 'Pumped weight: 11.2 kg'],
    ['Pump: 100 × (pumped weight − green weight) ÷ green weight | 100 × (11,200 g − 10,000 g) ÷ 10,000 g | 12 %'],
    ['Pump: 12 %', 'Pickle in the meat: 1.2 kg'],
  ],
  [
    'phosphate',
    ['Phosphate in the pickle: 5 %', 'Pump: 10 % of the green weight'],
    [
      'On the green weight: phosphate in the pickle × pump | 5 % × 10 % | 0.5 %',
      'On the pumped weight: the same ÷ (100 % + pump) | 0.5 % ÷ (100 % + 10 %) | 0.455 %',
    ],
    ['On the green weight: 0.5 %', 'On the pumped weight: 0.455 %'],
  ],
  [
    'a time at a temperature',
    ['Core: 145 °F', 'Table: Cooked meat'],
    ['The row that counts: the hottest printed row at or below the core | 145 °F is at or above 145 °F | 145 °F for 4 min'],
    ['To be held for: 4 min'],
  ],
  [
    'a curve',
    ['Published limit: Cooling', 'Limit: 130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h'],
    [
      'Against the limit: 130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h | 130 → 80 °F in 1 h 40 min, 80 → 40 °F: 79 °F after 40 min | 130 → 80 °F took 1 h 40 min; 1 h 30 min are allowed. Chilling was ended before 40 °F was reached: the last reading is 79 °F.',
    ],
    ['Measured: 130 → 80 °F in 1 h 40 min, 80 → 40 °F: 79 °F after 40 min'],
  ],
  [
    'a cook',
    ['Published limit: Cooked meat', 'Table: one row of the table held, 54.4 °C for 1 h 52 min … 71.1 °C, no holding time'],
    [
      'Listeria monocytogenes, 70 °C for 2 min, from 54.4 °C: sum of time ÷ D, where D = D at the reference × 10^((reference − T) ÷ z) | D 0.333 min at 70 °C, z 7.5 °C, straight lines between 2 readings | about 1 log₁₀ (Listeria monocytogenes, 70 °C for 2 min; model estimate)',
      'Escherichia coli O157, in burgers, 70 °C for 2 min, from 54.4 °C: sum of time ÷ D, where D = D at the reference × 10^((reference − T) ÷ z) | D 0.333 min at 70 °C, z 6 °C, straight lines between 2 readings | about 0.5 log₁₀ (Escherichia coli O157, in burgers, 70 °C for 2 min; model estimate, figures not confirmed)',
    ],
    [
      'Judged by: nothing yet',
      'Salmonella, by the meat table, from 54.4 °C: about 5.5 log₁₀ (Salmonella, by the meat table; model estimate)',
      'Listeria monocytogenes, 70 °C for 2 min, from 54.4 °C: about 1 log₁₀ (Listeria monocytogenes, 70 °C for 2 min; model estimate)',
      'Escherichia coli O157, in burgers, 70 °C for 2 min, from 54.4 °C: about 0.5 log₁₀ (Escherichia coli O157, in burgers, 70 °C for 2 min; model estimate, figures not confirmed)',
    ],
  ],
  [
    'humidity',
    ['Option 3: relative humidity ≥ 90 % for ≥ 25 % of the cooking time or 1 h, whichever is longer', 'Cooking time: 3 h'],
    ['Humid for at least: the longer of a quarter of the cooking time and 1 h | the longer of a quarter of 3 h and 1 h | 1 h'],
    ['Humid for at least: 1 h'],
  ],
  [
    'another temperature',
    ['To stand for: 70 °C for 2 min, burgers', 'Core: 65 °C'],
    [
      'The printed row: the hottest printed row at or below the core | 65 °C is at or above 65 °C | 65 °C for 14 min',
      'The law behind the rows: 2 min × 10^((70 °C − T) ÷ z) | 2 min × 10^((70 − 65) ÷ 6) | about 13 min 38 s',
    ],
    ['By the printed row: 14 min', 'By the law, as support: about 13 min 38 s'],
  ],
  [
    'an arrival',
    ['Target: 26.7 °C', 'It lies in: 2 °C'],
    [
      'The law of the last readings: T = medium + j (T₀ − medium) e^(−t ÷ τ), fitted to ln(T − medium) | 6 readings of the last 90 min, medium ± 2 °C, last reading ± 0.3 °C | 26.7 °C is expected in about 39 min, at the earliest in about 33 min, at the latest in about 46 min. It must be there in about 2 h 15 min.',
    ],
    [
      'State: on course',
      'Most likely: about 2 h 24 min after the first reading',
      'At the earliest: about 2 h 18 min after the first reading',
      'At the latest: about 2 h 31 min after the first reading',
    ],
  ],
  [
    'growth',
    ['Meat: beef', 'Cured: yes'],
    [
      'Juneja et al. 2011, cooked uncured beef: R = sum of b²(T − Tmin)²(1 − e^(c(T − Tmax))) × time; with lag lg((1 + q0·10^R) ÷ (1 + q0)) | b 0.05, Tmin 10.15 °C, c 0.238, Tmax 53 °C, q0 0.0699; R 2.74 log₁₀ | at least 1 to 2 log₁₀, between the readings it may be above 2 log₁₀ (model estimate; Juneja et al. 2011, cooked uncured beef, version 1, figures not confirmed)',
    ],
    [
      'Worst case, as if uncured: at least 1 to 2 log₁₀, between the readings it may be above 2 log₁₀ (model estimate; Juneja et al. 2011, cooked uncured beef, version 1, figures not confirmed)',
      'Ham with 200 ppm nitrite and 547 ppm erythorbate, first stage 5, 7.5 or 10 h, second 10, 12.5 or 15 h: no growth in any',
      'Ham with 200 ppm nitrite and 547 ppm erythorbate, 54.4 to 26.7 °C in 10 h, then 15 h: below 1 log₁₀ over 25 h',
      'Ham with 150 ppm nitrite and 547 ppm erythorbate, 54.4 to 26.7 °C in 10 h, then 15 h: below 1 log₁₀ over 25 h',
    ],
  ],
  [
    'fermentation',
    ['At the start: 80 °F, pH 5.6', 'After 1 h: 80 °F, pH 5.3'],
    [
      'Degree-hours: sum of (chamber − 60 °F) × hours until pH 5.3 | 20 °F·h, chamber at most 80 °F | pH 5.3 was reached after at most 20 °F·h; 1,200 °F·h are allowed.',
    ],
    [
      'Measured: 20 °F·h, chamber at most 80 °F',
      'Limit: ≤ 1,200 °F·h below 90 °F, ≤ 1,000 °F·h up to 100 °F, ≤ 900 °F·h above it, counted over 60 °F until pH 5.3',
    ],
  ],
  [
    'drying',
    ['Loss aimed at: 30 %', 'Day 0: 500 g'],
    [
      'Lost so far: (first weight − last weight) ÷ first weight | 2 weighings | 10.0 %',
      'When: loss = final × (1 − e^(−days ÷ τ)), fitted to the weighings | too early to tell | Weighed after the start: 1 of the 3 times needed.',
    ],
    ['Lost so far: 10.0 %', 'State: too early to tell'],
  ],
  [
    'freezing',
    ['Read in: the freezer, 6 in thick', 'At the start: 130 °F'],
    [
      'Against the table: ≥ 20 days at or below 5 °F (-15 °C) or 10 days at or below -10 °F (-23.3 °C) or 6 days at or below -20 °F (-28.9 °C), in the freezer, 6 in thick | 0 s at or below 5 °F | 480 h short of 20 days at or below 5 °F, the nearest row.',
    ],
    ['Measured: 0 s at or below 5 °F'],
  ],
  [
    'composition',
    ['Moisture, %: 60', 'Protein, %: 14'],
    [
      'Moisture to protein: moisture ÷ protein | 60 ÷ 14 | 4.286',
      'Salt in the water phase: 100 × salt ÷ (salt + moisture) | 100 × 2 ÷ (2 + 60) | 3.226 %',
    ],
    ['Added water: 4 %', 'Fat and added water: 29 %', 'Moisture to protein: 4.286', 'Salt in the water phase: 3.226 %'],
  ],
  [
    'water in a frankfurter',
    ['Product: frankfurter or bologna', 'Moisture: 56 %'],
    [
      'Fat and added water: fat + (moisture − 4 × protein), never below nothing | 29 + (56 − 4 × 11) | 41 %',
      'Moisture allowed: 4 × protein + limit − fat | 4 × 11 + 40 − 29 | 55 %',
    ],
    ['Fat and added water: 41 %', 'Moisture allowed at this protein: 55 %'],
  ],
  [
    'moisture to protein',
    ['Product: semi-dry sausage, shelf stable', 'Moisture: 62 %'],
    ['Moisture to protein: moisture ÷ protein | 62 ÷ 20 | 3.1', 'Moisture allowed: limit × protein | 3.1 × 20 | 62 %'],
    ['Moisture to protein: 3.1', 'Moisture allowed at this protein: 62 %'],
  ],
  [
    'listeria',
    ['Salt in the water phase: 3.5 %', 'pH: 6.1'],
    [
      'Water activity: 1 − 0.0052471 × salt − 0.00012206 × salt² | 1 − 0.0052471 × 3.5 − 0.00012206 × 3.5² | aw 0.9801',
      'Rate: L. monocytogenes: rate and growth boundary of Mejlholm and Dalgaard 2009, no lag | 5 °C, pH 6.1, aw 0.9801 | 0.02279 per hour',
    ],
    ['After 240 h (model estimate): 2.4 log₁₀', 'To a hundredfold: about 8 days'],
  ],
  [
    'an instrument',
    ['At least: 165 °F', 'The thermometer is good to: ± 1 °F'],
    ['What it must show: limit + error | 165 °F + 1 °F | 166 °F'],
    ['Shown at least: 166 °F'],
  ],
  [
    'boiling water',
    ['Pressure reduced to sea level: 1,005 hPa', 'Height of the place: 1,600 m'],
    [
      'Pressure at this height: reduced pressure × (1 − 0.0065 × height ÷ 288.15)^5.255876 | 1,005 hPa × (1 − 0.0065 × 1,600 m ÷ 288.15)^5.255876 | 828.4 hPa',
      'Boiling point: saturation temperature of water at that pressure | T(828.4 hPa) | 94.43 °C',
    ],
    ['It should show: 94.4 °C', 'Known to: ± 0.6 °C', 'In melting ice: 0 °C'],
  ],
])('%s is told in English: what was given, its last steps, its first results', (name, given, steps, results) => {
  const told = toldIn('en', sample(name));
  expect(told.given.slice(0, 2)).toEqual(given);
  expect(told.steps.slice(-2)).toEqual(steps);
  expect(told.results.slice(0, 4)).toEqual(results);
});

describe.each<Language>(['en', 'es'])('in %s', (language) => {
  test.each(Object.keys(sampleCalculations))('no part of %s is left as its code', (name) => {
    const { given, steps, results, rest } = toldIn(language, sample(name));
    const codes = new Set(Object.keys({ ...allWords.workings.en, ...allWords.calculations.en }));
    const parts = [...given, ...steps, ...results, ...rest].flatMap((each) => each.split(/: | \| /));
    expect(parts.filter((part) => codes.has(part) && /[-.]/.test(part))).toEqual([]);
  });
});

test('a reader of Spanish is told in Spanish, with the same figures', () => {
  expect(toldIn('es', sample('curing salt'))).toMatchObject({
    given: [
      'Bloque de carne: 7.3 kg',
      'nitrito de sodio en la sal de cura: 6.25 %',
      expect.any(String),
      'La báscula muestra pasos de: 0.1 g',
    ],
    steps: [expect.stringContaining('7,300 g × 156.25 ppm ÷ 1,000,000 ÷ 6.25 % | 18.25 g')],
    results: ['Como máximo: 18.25 g', expect.stringContaining('queda con seguridad dentro')],
  });
});
