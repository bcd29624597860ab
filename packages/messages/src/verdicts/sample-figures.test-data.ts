import type { Figures } from '@larderbook/haccp';

const minutes = (count: number) => ({ value: String(count * 60_000), unit: 'ms' as const });
const fahrenheit = (value: string) => ({ value, unit: '°F' as const });

const ppm = (value: string) => ({ value, unit: 'ppm' as const });
const grams = (value: string) => ({ value, unit: 'g' as const });
const percent = (value: string) => ({ value, unit: '%' as const });
const logs = (value: string) => ({ value, unit: 'log10' as const });
const days = (value: string) => ({ value, unit: 'days' as const });

/** A figure for each name that a sentence about a verdict can ask for. */
const SAMPLE: Figures = {
  ...{ hottest: fahrenheit('151.5'), at: fahrenheit('145'), instant: fahrenheit('158') },
  ...{ held: minutes(3), needed: minutes(4), spare: minutes(2), left: minutes(25), leftThen: minutes(50), toGo: minutes(40) },
  ...{
    short: minutes(1),
    over: minutes(15),
    past: minutes(15),
    age: minutes(16),
    gap: minutes(20),
    tolerated: minutes(15),
    straight: minutes(7),
  },
  stage: { from: fahrenheit('130'), to: fahrenheit('80') },
  ...{ from: fahrenheit('130'), to: fahrenheit('80'), reading: fahrenheit('84'), upper: fahrenheit('120') },
  ...{ took: minutes(105), allowed: minutes(90), within: minutes(90), cold: minutes(30), half: minutes(12) },
  ...{ rate: fahrenheit('60'), most: fahrenheit('91.1'), error: fahrenheit('0.6') },
  ...{ askedAt: 'Into the chiller', probe: 'C', probes: 'right, left', count: 2, readings: 1_000_001, atMost: 1_000_000 },
  doubt: { code: 'clock-an-hour-off' },
  fault: { code: 'ion-not-held', figures: { ion: 'NO₃' } },
  ...{ ion: 'NO₃', d: { value: '0.0001', unit: 'min' }, z: { value: '2', unit: '°C' } },
  ...{ asked: 'at least 100 ppm', there: '98 ppm', by: ppm('2') },
  ...{ read: fahrenheit('44'), bound: fahrenheit('41'), value: fahrenheit('27'), lowest: fahrenheit('45'), highest: fahrenheit('140') },
  ...{
    of: { code: 'possible-chamber' },
    seen: 'Label 12',
    own: 'jerky',
    lacking: 'Pepper',
    code: 'A-1',
    piece: 'B',
    substance: 'phosphate',
  },
  ...{ shown: fahrenheit('34.5'), expected: fahrenheit('32'), off: fahrenheit('2.5'), beyond: fahrenheit('0.5') },
  ...{ weighed: ppm('187.5'), judged: ppm('187.5'), leastIn: ppm('180'), mostIn: ppm('195'), ppm: ppm('72.952'), as: 'NO₂' },
  ...{
    tooMuch: grams('5'),
    add: grams('0.4'),
    meat: grams('418.7'),
    metric: { value: '2', unit: 'kg' },
    us: { value: '4.41', unit: 'lb' },
  },
  ...{ ingredient: 'curing salt', name: 'curing salt', content: percent('6.25'), reworks: 'L-7', formula: 'salt/(salt+water)' },
  ...{ kept: { code: 'kept-sealed-oven', figures: { time: minutes(100) } }, time: minutes(100), percent: percent('92') },
  ...{ oven: fahrenheit('250'), humid: minutes(80), cooking: minutes(180), reached: fahrenheit('150'), least: fahrenheit('145') },
  band: { from: fahrenheit('50'), to: fahrenheit('130') },
  ...{
    kill: { code: 'killed-about', figures: { logs: logs('5.5'), set: 'Salmonella', standing: 'confirmed' } },
    logs: logs('5.5'),
    target: logs('6.5'),
    set: 'Salmonella',
  },
  ...{
    grown: { code: 'grown-0.5-to-1-log' },
    estimate: { code: '1 to 2 log' },
    standing: 'unconfirmed',
  },
  ...{ version: '1', unseen: 1, soon: 1, coldest: { value: '10', unit: '°C' } },
  ...{ pH: { value: '5.3', unit: 'pH' }, sure: { value: '1210', unit: '°F·h' }, lost: percent('30'), step: percent('62.8') },
  ...{ best: days('4.2'), earliest: days('3'), latest: days('6') },
  thickness: { value: '30', unit: 'in' },
  ...{ why: 'Nothing was weighed.', next: 'Weigh it.' },
};

const plain = (value: string) => ({ value, unit: 'ratio' as const });
const pounds = { value: '10', unit: 'lb' as const };
const degreeHours = (value: string) => ({ value, unit: '°F·h' as const });

/** Where a name stands for a figure of another kind. */
const OWN: readonly (readonly [begins: string, figures: Figures])[] = [
  ['range-', { by: fahrenheit('3') }],
  ['value-within', { spare: fahrenheit('4') }],
  ['allowed-for-pH', { error: plain('0.05') }],
  ['allowed-for-aw', { error: plain('0.003') }],
  ['figure-', { of: 'fat', read: percent('31'), by: percent('1'), bound: percent('30') }],
  ['check', { allowed: fahrenheit('2') }],
  ['humidity-piece', { least: pounds }],
  ['humidity-too-low', { percent: percent('85'), least: percent('90') }],
  ['humidity-cook-too-short', { least: minutes(60) }],
  ['humidity-', { needed: minutes(90), spare: minutes(10) }],
  ['kept-large', { piece: pounds }],
  ['ppm-', { by: ppm('31.25'), spare: ppm('2'), most: ppm('156.25'), least: ppm('120') }],
  ['just-', { bound: ppm('156.25') }],
  ['asks-salt', { least: percent('2.5') }],
  ['asks-', { least: ppm('100') }],
  ['scales-', { read: ppm('101'), least: ppm('98') }],
  ['condition-', { read: ppm('98'), spare: ppm('2') }],
  ['band', { to: fahrenheit('130') }],
  ['lethality', { short: logs('0.5') }],
  ['growth', { bound: logs('1'), set: 'Juneja, beef' }],
  ['grown', { most: minutes(60) }],
  [
    'fermentation',
    {
      ...{ most: degreeHours('1100'), allowed: degreeHours('1200'), straight: degreeHours('1000') },
      ...{ over: degreeHours('10'), past: degreeHours('10'), spare: degreeHours('100') },
    },
  ],
  ['loss', { asked: percent('35'), spare: percent('1.5'), short: percent('3') }],
  ['weighed-to-the-worse', { error: grams('0.5') }],
  ['freezing', { at: fahrenheit('-10'), held: minutes(3600), needed: minutes(3780), short: minutes(180) }],
];

/** A figure for each name that a text can ask for. */
export const sampleFor = (code: string): Figures => {
  const [, own = {}] = OWN.find(([begins]) => code.startsWith(begins)) ?? [];
  return { ...SAMPLE, ...own };
};
