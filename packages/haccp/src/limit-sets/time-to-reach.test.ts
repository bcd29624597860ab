import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import { timeToReach } from './time-to-reach';

const warm = [{ at: 0, temperature: degrees(140, '°F') }];

test('what was not reached is named in the unit that is printed, in °C where both are', () => {
  expect(timeToReach(warm, 0, { '°F': 4000 })).toEqual({ fault: 'No reading shows that the core stays at or below 40 °F.' });
  expect(timeToReach(warm, 0, { '°F': 4000, '°C': 440 })).toHaveProperty('fault', expect.stringContaining('below 4.4 °C'));
});
