import type { Figures } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from '../all';
import { spoken } from './spoken';

const voice = { timeZone: 'UTC', timeStyle: 'US' } as const;
const [english, spanish] = [
  spoken(allWords.forecasts.en, { language: 'en', ...voice }),
  spoken(allWords.forecasts.es, { language: 'es', ...voice }),
];
const hours = (count: number) => ({ value: String(count * 3_600_000), unit: 'ms' }) as const;
const target = { value: '80', unit: '°F' } as const;
const inTime = (count: number) => ({ code: 'in-about-time', figures: { time: hours(count) } });

test.each<[string, Figures, string]>([
  [
    'expected-in',
    { target, best: inTime(2), earliest: { code: 'in-less-than-a-minute' }, latest: { code: 'perhaps-never' } },
    '80 °F is expected in about 2 h, at the earliest in less than 1 min, at the latest perhaps never.',
  ],
  ['never-in-this-medium', { target }, 'At this temperature of the medium 80 °F is never reached.'],
  ['must-be-there', { when: inTime(3) }, 'It must be there in about 3 h.'],
  ['must-be-there-already', {}, 'It must be there already.'],
  ['cool-faster', {}, 'Cool it faster: colder medium, more air, smaller pieces.'],
  ['check-heat-and-load', {}, 'Check the heat and the load.'],
  ['take-more-readings', {}, 'Take more readings.'],
  ['medium-unusable', {}, 'The temperature of the medium is no usable number.'],
  ['target-no-temperature', {}, 'The target is no usable temperature.'],
  ['enter-it-again', {}, 'Enter it again.'],
  ['nothing-usable-read', {}, 'There is no usable reading.'],
  ['read-core-and-medium', {}, 'Read the core and the medium, and again ten minutes later.'],
  ['target-was-reached', { target }, '80 °F was reached at the last reading.'],
  ['medium-unknown', {}, 'What it lies in was not read, and the readings do not tell how cold or hot that is.'],
  ['read-the-medium', {}, 'Read the air or the water it lies in.'],
  ['name-the-medium', {}, 'Name in the plan what it lies in: then it can be read.'],
  ['few-falling-readings', { count: 1 }, 'There is 1 falling reading past the first tenth of the way; three over 20 min are needed.'],
  ['few-rising-readings', { count: 2 }, 'There are 2 rising readings past the first tenth of the way; three over 20 min are needed.'],
  ['not-falling-to-medium', {}, 'The readings are not falling towards the medium, or are already too near to it.'],
  ['not-rising-to-medium', {}, 'The readings are not rising towards the medium, or are already too near to it.'],
  ['medium-changed', {}, 'The medium changed: what was read before is not counted.'],
  [
    'should-have-been-reached',
    { target, time: { code: 'about-time', figures: { time: hours(1) } } },
    '80 °F should have been reached about 1 h ago, and nobody has read it since.',
  ],
  ['read-core-now', {}, 'Read the core now.'],
])('%s', (code, figures, text) => {
  expect(english(code, figures)).toBe(text);
  expect(spanish(code, figures)).not.toMatch(/[{}]|\b(the|is|it|and)\b/);
});
