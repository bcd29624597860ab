import type { Figures } from '@larderbook/haccp';

const minutes = (count: number) => ({ value: String(count * 60_000), unit: 'ms' as const });
const fahrenheit = (value: string) => ({ value, unit: '°F' as const });

/** A figure for each name that a sentence about a verdict can ask for. */
export const SAMPLE: Figures = {
  ...{ hottest: fahrenheit('151.5'), at: fahrenheit('145'), instant: fahrenheit('158') },
  ...{ held: minutes(3), needed: minutes(4), spare: minutes(2), left: minutes(25), leftThen: minutes(50), toGo: minutes(40) },
  ...{ short: minutes(1), over: minutes(15), age: minutes(16), gap: minutes(20), tolerated: minutes(15), straight: minutes(7) },
  stage: { from: fahrenheit('130'), to: fahrenheit('80') },
  ...{ from: fahrenheit('130'), to: fahrenheit('80'), reading: fahrenheit('84'), upper: fahrenheit('120') },
  ...{ took: minutes(105), allowed: minutes(90), within: minutes(90), cold: minutes(30), half: minutes(12) },
  ...{ rate: fahrenheit('60'), most: fahrenheit('91.1'), error: fahrenheit('0.6') },
  ...{ askedAt: 'Into the chiller', probe: 'C', probes: 'right, left', count: 2, readings: 1_000_001, atMost: 1_000_000 },
  doubt: { code: 'clock-an-hour-off' },
  ...{ fault: 'The rows contradict each other.', asked: 'at least 100 ppm', there: '98 ppm', margin: '2 ppm short' },
  ...{ why: 'Nothing was weighed.', next: 'Weigh it.' },
};
