import * as sets from '@larderbook/haccp';
import type { CriticalLimit } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from '../all';
import type { Language } from '../languages';
import { limitTeller } from './limit-teller';

const inLanguage = (language: Language) => limitTeller(allWords.limits[language], { language, timeZone: 'UTC', timeStyle: 'US' });
const english = inLanguage('en');
const spanish = inLanguage('es');
const { source } = sets.coldHolding;
const classes = sets.degreeHoursFahrenheit.classes;

test.each<[CriticalLimit, string, string]>([
  [sets.coldHolding, '≤ 41 °F (5 °C)', '≤ 41 °F (5 °C)'],
  [sets.hotHolding, '≥ 135 °F (57 °C)', '≥ 135 °F (57 °C)'],
  [{ kind: 'range', measured: 'temperature', max: { '°C': 400 }, signs: { max: '<' }, source }, '< 4 °C', '< 4 °C'],
  [{ kind: 'range', measured: 'pH', max: 5300, source }, 'pH ≤ 5.3', 'pH ≤ 5.3'],
  [{ kind: 'range', measured: 'percent', min: 10_000, max: 12_500, source }, '≥ 10 % and ≤ 12.5 %', '≥ 10 % y ≤ 12.5 %'],
  [{ kind: 'range', measured: 'pH', source }, 'pH no bound set', 'pH sin cifra indicada'],
  [{ kind: 'figure', of: 'fat', unit: '%', max: 30_000, source }, 'fat ≤ 30 %', 'grasa ≤ 30 %'],
  [{ kind: 'figure', of: 'our own index', unit: 'ratio', min: 1900, source }, 'our own index ≥ 1.9', 'our own index ≥ 1.9'],
  [{ kind: 'figure', of: 'water activity', unit: 'aw', max: 850, source }, 'water activity ≤ 0.85', 'actividad de agua ≤ 0.85'],
  [{ kind: 'figure', of: 'lactic acid', unit: '°F·h', max: 900_000, source }, 'lactic acid ≤ 900 °F·h', 'lactic acid ≤ 900 °F·h'],
  [
    { kind: 'figure', of: 'ingoing sodium nitrite', unit: 'ppm', printed: '¼ oz per 100 lb', max: 156_000, source },
    'ingoing sodium nitrite ¼ oz per 100 lb',
    'nitrito de sodio agregado ¼ oz per 100 lb',
  ],
  [
    { kind: 'figure', of: 'ingoing sodium nitrite', unit: 'ppm', min: 40_000, advises: true, source },
    'ingoing sodium nitrite ≥ 40 ppm, advised',
    'nitrito de sodio agregado ≥ 40 ppm, recomendado',
  ],
  [sets.nitriteComminuted, '≤ ¼ oz per 100 lb (156 ppm)', '≤ ¼ oz per 100 lb (156 ppm)'],
  [sets.nitriteComminutedRefrigerated, '≥ 120 ppm and ≤ ¼ oz per 100 lb (156 ppm)', '≥ 120 ppm y ≤ ¼ oz per 100 lb (156 ppm)'],
  [
    { ...sets.nitriteComminutedRefrigerated, countedAs: 'NO₂', printed: '80 mg/kg as NO₂ ion', min: 2000, max: 8000 },
    '≥ 20 ppm as NO₂ and ≤ 80 mg/kg as NO₂ ion',
    '≥ 20 ppm como NO₂ y ≤ 80 mg/kg as NO₂ ion',
  ],
  [sets.reheatedFoodCode, '165 °F for 15 s', '165 °F durante 15 s'],
  [
    { ...sets.reheatedFoodCode, rows: [...sets.reheatedFoodCode.rows, { at: { '°F': 17_000 }, seconds: 0 }] },
    '165 °F for 15 s, or 170 °F, no holding time',
    '165 °F durante 15 s, o 170 °F, sin tiempo de mantenimiento',
  ],
  [{ ...sets.cookedMeat65Log, rows: [] }, 'no row', 'ninguna fila'],
  [
    sets.cookedMeat65Log,
    'one row of the table held, 130 °F for 1 h 52 min … 160 °F, no holding time',
    'una fila de la tabla mantenida, 130 °F durante 1 h 52 min … 160 °F, sin tiempo de mantenimiento',
  ],
  [
    sets.coolingUncured,
    '130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h',
    '130 → 80 °F en 1 h 30 min como máximo, luego 80 → 40 °F en 5 h como máximo',
  ],
  [
    sets.coolingFoodCode,
    '135 → 70 °F within 2 h, and 135 → 41 °F within 6 h in all',
    '135 → 70 °F en 2 h como máximo, y 135 → 41 °F en 6 h en total como máximo',
  ],
  [
    sets.coolingFromCooking,
    'begun within 1 h 30 min of cooking, then 120 → 55 °F within 6 h',
    'comenzado dentro de 1 h 30 min desde la cocción, luego 120 → 55 °F en 6 h como máximo',
  ],
  [
    { ...sets.coolingUncured, stages: [{ to: { '°C': 800 }, withinSeconds: 3600, counted: 'end of cooking' }] },
    'end of cooking → 46.4 °F within 1 h',
    'fin de la cocción → 46.4 °F en 1 h como máximo',
  ],
  [sets.comeUpWithinSixHours, '50 → 130 °F within 6 h in all', '50 → 130 °F en 6 h en total como máximo'],
  [
    { kind: 'growth', species: 'mixed or unknown', log10: 100, longestGapSeconds: 3600, source },
    'at most 1 log of C. perfringens while cooling, predicted for mixed or unknown meat',
    'como máximo 1 log de C. perfringens durante el enfriamiento, según el modelo para carne mixta o desconocida',
  ],
  [
    {
      kind: 'lethality',
      set: sets.salmonellaByTheMeatTable,
      log10: 650,
      floor: { '°F': 13_000 },
      authority: 'A',
      longestGapSeconds: 900,
      source,
    },
    '≥ 6.5 log (Salmonella, by the meat table: D 1.714 min at 60 °C, z 5.56 °C), counted from 130 °F',
    '≥ 6.5 log (Salmonella, según la tabla de carnes: D 1.714 min a 60 °C, z 5.56 °C), contado desde 130 °F',
  ],
  [
    { kind: 'degreeHours', ...sets.degreeHoursFahrenheit },
    '≤ 1,200 °F·h below 90 °F, ≤ 1,000 °F·h up to 100 °F, ≤ 900 °F·h above it, counted over 60 °F until pH 5.3',
    '≤ 1,200 °F·h por debajo de 90 °F, ≤ 1,000 °F·h hasta 100 °F, ≤ 900 °F·h por encima, contados por encima de 60 °F hasta pH 5.3',
  ],
  [
    { kind: 'degreeHours', ...sets.degreeHoursFahrenheit, classes: classes.slice(-1) },
    '≤ 900 °F·h, counted over 60 °F until pH 5.3',
    '≤ 900 °F·h, contados por encima de 60 °F hasta pH 5.3',
  ],
  [{ kind: 'weightLoss', percent: 33.5, source }, '≥ 33.5 % of the start weight lost', '≥ 33.5 % del peso inicial perdido'],
  [
    { kind: 'freezing', read: { what: 'freezer', thickness: { value: 6, unit: 'in' } }, longestGapSeconds: 7200, source },
    '≥ 20 days at or below 5 °F (-15 °C) or 10 days at or below -10 °F (-23.3 °C) or 6 days at or below -20 °F (-28.9 °C), in the freezer, 6 in thick',
    '≥ 20 días a 5 °F (-15 °C) o menos o 10 días a -10 °F (-23.3 °C) o menos o 6 días a -20 °F (-28.9 °C) o menos, en el congelador, 6 in de grosor',
  ],
  [
    { kind: 'freezing', read: { what: 'freezer', thickness: { value: 28, unit: 'in' } }, longestGapSeconds: 7200, source },
    'no row',
    'ninguna fila',
  ],
  [{ kind: 'attestation', statement: 'The door is shut.', source }, 'The door is shut.', 'The door is shut.'],
])('%#: %s', (limit, inEnglish, inSpanish) => {
  expect(english.sayLimit(limit)).toBe(inEnglish);
  expect(spanish.sayLimit(limit)).toBe(inSpanish);
});

test('a frozen centre is told by every row that is printed', () => {
  const centre: CriticalLimit = { kind: 'freezing', read: { what: 'centre' }, longestGapSeconds: 7200, source };
  expect(english.sayLimit(centre)).toMatch(
    /^≥ 106 h at or below 0 °F \(-17.8 °C\) or .* or 30 min at or below -35 °F \(-37.2 °C\), at the centre$/,
  );
});

test('curves are told in the unit of the readings, and a published row in each unit that is printed', () => {
  expect(english.sayLimit(sets.coolingUncured, '°C')).toBe('54.4 → 26.7 °C within 1 h 30 min, then 26.7 → 4.4 °C within 5 h');
  expect(english.formatPrinted(sets.comeUpWithinSixHours)).toEqual(['50 → 130 °F within 6 h in all', '10 → 54.4 °C within 6 h in all']);
  expect(english.formatPrinted(sets.coldHolding)).toEqual(['≤ 41 °F (5 °C)']);
});

test('every published limit is told in both languages, with its comparison in it', () => {
  for (const { limit } of sets.catalogue)
    for (const teller of [english, spanish]) {
      expect(teller.sayLimit(limit)).toMatch(/[≤≥<>→]|for|durante|no holding time|sin tiempo/);
      expect(teller.sayLimit(limit, '°C')).not.toMatch(/undefined|NaN(?!O)|[{}]/);
    }
});

test('what a limit is about is a word or two, or its figures say it', () => {
  expect([sets.coldHolding, sets.nitriteComminuted, sets.coolingUncured].map(english.formatAbout)).toEqual([
    'temperature',
    'sodium nitrite',
    'cooling',
  ]);
  expect([sets.coldHolding, sets.nitriteComminuted, sets.coolingUncured].map(spanish.formatAbout)).toEqual([
    'temperatura',
    'nitrito de sodio',
    'enfriamiento',
  ]);
  expect(english.formatAbout({ kind: 'range', measured: 'percent', max: 1000, source })).toBeUndefined();
  expect(english.formatAbout({ kind: 'range', measured: 'aw', max: 850, source })).toBe('aw');
});

test('what lots are judged by comes first, then what adopting the plan affirms and what it has to support', () => {
  const conditions: sets.LimitCondition[] = [
    { kind: 'support', says: 'Only inside a gap.' },
    { kind: 'statement', says: 'Humidity is controlled too.' },
    { kind: 'nitrite', least: 100_000, per: 'meat block' },
    { kind: 'accelerator', least: 250_000, per: 'batch' },
    { kind: 'salt in water phase', least: 3500, formula: 'salt/water' },
  ];
  expect(english.sayConditions(conditions)).toEqual([
    'Only with at least 100 ppm ingoing sodium nitrite on the meat block, and at least 250 ppm ingoing erythorbate or ' +
      'ascorbate on the batch, and at least 3.5 % salt in the water phase, salt/water: judged from what goes into every lot.',
    'Adopting the plan affirms: Humidity is controlled too.',
    'The plan says what supports it: Only inside a gap.',
  ]);
  expect(spanish.sayConditions(conditions.slice(2, 3))).toEqual([
    'Solo con por lo menos 100 ppm de nitrito de sodio agregado sobre el bloque de carne: se evalúa por lo que entra en cada lote.',
  ]);
  expect(english.sayConditions()).toEqual([]);
});

test('a row is for classes of product and places by their names', () => {
  expect(english.sayCondition({ kind: 'product', among: ['jerky', 'ham, pumped'] })).toBe('for: Jerky; Ham, pumped');
  expect(spanish.sayCondition({ kind: 'product', among: ['jerky', 'ham, pumped'] })).toBe('para: Carne seca (jerky); Jamón inyectado');
  expect(english.sayCondition({ kind: 'place', among: ['Scotland'] })).toBe('in Scotland');
  expect(english.sayCondition({ kind: 'statement', says: 'It is kept dry.' })).toBe('It is kept dry.');
});

test('what is said to support a figure is said by what it is, and too little is not said', () => {
  const support = { read: ' edition 2021, p. 20 ', gap: 'large mass, p. 31', own: 'study in folder 3' };
  expect(english.saySupport({ ...source, support })).toEqual([
    'Read in the source by the shop: edition 2021, p. 20',
    'Inside a scientific gap of the guideline in force: large mass, p. 31',
    'Support on file: study in folder 3',
  ]);
  expect(english.saySupport({ ...source, support: { own: 'yes' } })).toEqual([]);
  expect(english.saySupport(source)).toEqual([]);
});

test('what stands beside a limit at a control point is told', () => {
  expect([{ everyMinutes: 30 }, { timesInALot: 1 }, { timesInALot: 3 }].map(english.sayFrequency)).toEqual([
    'at least every 30 min',
    'at least once in a lot',
    'at least 3 times in a lot',
  ]);
  expect(english.sayPiece({ shape: 'slab', smallest: { value: 2.5, unit: 'in' } })).toBe('slab, 2.5 in at its thinnest');
  expect(english.sayPiece({ shape: 'stirred' })).toBe('stirred or pumped: no core');
  expect(
    english.sayErrors({
      temperature: { hundredths: -100, unit: '°F' },
      mass: { thousandths: 500, unit: 'g', step: 1000 },
      meat: { thousandths: 50, unit: 'kg' },
      pH: { thousandths: 50 },
      aw: { thousandths: 3 },
    }),
  ).toEqual([
    '± 1 °F of the thermometer',
    '± 0.5 g of the scale for ingredients and pieces, which shows steps of 1 g',
    '± 0.05 kg of the scale for meat',
    '± 0.05 of the pH meter',
    '± 0.003 of the water activity meter',
  ]);
  expect(english.sayErrors({ mass: { thousandths: 500, unit: 'g' } })).toEqual(['± 0.5 g of the scale for ingredients and pieces']);
  expect(english.sayErrors({})).toEqual([]);
});

test.each([
  ['en', /^≥ 106 h at or below 0 °F \(-17\.8 °C\) … 30 min at or below -35 °F \(-37\.2 °C\) \(one of 8 rows\), at the centre$/],
  ['es', /\(una de 8 filas\)/],
] as const)('a long table is told by its ends where there is little room, a short one whole: %s', (language, said) => {
  const { sayInShort, sayLimit } = inLanguage(language);
  const centre: CriticalLimit = { kind: 'freezing', read: { what: 'centre' }, longestGapSeconds: 7200, source };
  const freezer: CriticalLimit = { ...centre, read: { what: 'freezer', thickness: { value: 6, unit: 'in' } } };
  expect(sayInShort(centre)).toMatch(said);
  expect([freezer, sets.cookedMeat65Log].map((limit) => sayInShort(limit))).toEqual(
    [freezer, sets.cookedMeat65Log].map((limit) => sayLimit(limit)),
  );
});
