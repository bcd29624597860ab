import { expect, test } from 'vitest';
import { usualHabits, zoneChoices } from './time-zones';

test.each([
  ['en-US', { units: 'US', paper: 'Letter' }],
  ['fr-CA', { units: 'metric', paper: 'Letter' }],
  ['de-AT', { units: 'metric', paper: 'A4' }],
  ['en', { units: 'US', paper: 'Letter' }],
])('a device in %s starts with the units and the paper that are usual there', (language, habits) => {
  expect(usualHabits(language)).toEqual(habits);
});

test('the zone of the device comes first and only once, even one that the browser does not list', () => {
  expect(
    zoneChoices('America/Chicago')
      .map(({ value }) => value)
      .filter((zone) => zone === 'America/Chicago'),
  ).toHaveLength(1);
  expect(zoneChoices('America/Chicago')[0]).toEqual({ value: 'America/Chicago', name: 'America / Chicago' });
  expect(zoneChoices('Etc/GMT+5')[0]?.value).toBe('Etc/GMT+5');
});
