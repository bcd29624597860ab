import { recordInstrument } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { check } from '../../../api/check';
import { instrumentFields, unitsOf, usualInstrument } from './instrument-draft';

test('a food thermometer starts with the tolerance of the FDA Food Code, in the shop’s unit', () => {
  expect(usualInstrument('thermometer', 'US')).toMatchObject({ unit: '°F', tolerance: '2' });
  expect(usualInstrument('thermometer', 'metric')).toMatchObject({ unit: '°C', tolerance: '1' });
});

test('a scale says nothing of its tolerance: that is read off the scale', () => {
  expect(usualInstrument('scale', 'metric')).toMatchObject({ unit: 'kg', tolerance: '' });
  expect(unitsOf('pH meter', 'US')).toEqual(['pH']);
});

test('a form without a tolerance and with half a day is refused beside its fields', () => {
  const draft = instrumentFields({ name: 'Bench scale', ...usualInstrument('scale', 'US'), days: '0.5' });
  expect(Object.keys(check(recordInstrument.body, draft).errors ?? {}).sort()).toEqual(['checkEveryDays', 'tolerance']);
});

test('a complete form is taken as it is', () => {
  const draft = instrumentFields({ name: 'Probe 1', ...usualInstrument('thermometer', 'US') });
  expect(check(recordInstrument.body, draft).value).toEqual({
    name: 'Probe 1',
    kind: 'thermometer',
    unit: '°F',
    tolerance: 2,
    checkEveryDays: 7,
  });
});
