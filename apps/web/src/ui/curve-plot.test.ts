import { expect, test } from 'vitest';
import type { CurveProps } from './curve-props';
import { plotOf, within } from './curve-plot';

const minute = 60_000;
const chill: CurveProps = {
  title: 'Chill',
  summary: '',
  unit: '°F',
  zone: 'UTC',
  probes: [
    {
      label: 'core',
      points: [
        { at: 0, value: 140 },
        { at: 60 * minute, value: 90 },
      ],
    },
  ],
};

test('the curve fills its plot from the first reading to the last', () => {
  const plot = plotOf(chill, 700);
  expect([plot.x(0), plot.x(60 * minute)]).toEqual([plot.left, plot.right]);
  expect(plot.y(90)).toBeGreaterThan(plot.y(140));
  expect(plot.isLabelled).toBe(true);
  expect(plotOf(chill, 320).isLabelled).toBe(false);
});

test('its scale holds the limits with the thermometer’s error, and what the product lies in', () => {
  const { ticks } = plotOf({ ...chill, limits: [{ label: '40 °F', value: 40, band: [39, 41] }] }, 700);
  expect(ticks[0]).toBeLessThanOrEqual(39);
  expect(plotOf({ ...chill, surroundings: [{ at: 0, value: 33 }] }, 700).ticks[0]).toBeLessThanOrEqual(33);
});

test('what is due and expected is shown when it is near, and no further than six tenths beyond', () => {
  const stage = { label: '130 → 80 °F', from: 0, state: 'running' as const };
  const shown = (deadline: number) => plotOf({ ...chill, stages: [{ ...stage, deadline }] }, 700).times[1];
  expect(shown(80 * minute)).toBe(80 * minute);
  expect(shown(600 * minute)).toBe(96 * minute);
  const arrival = { label: '80 °F', value: 80, earliest: 70 * minute, latest: 90 * minute };
  expect(plotOf({ ...chill, arrival }, 700).times[1]).toBe(90 * minute);
});

test('a stage has a row and what adds up a panel of its own under the time axis', () => {
  const bare = plotOf(chill, 700);
  const panel = { title: 'Lethality', unit: 'log₁₀', lines: [] };
  const stages = [{ label: 'Hold', from: 0, to: minute, state: 'met' as const }];
  const full = plotOf({ ...chill, stages, panel }, 700);
  expect(full.panel?.top).toBeGreaterThan(full.stagesTop);
  expect(full.height).toBeGreaterThan(bare.height);
  expect(bare.panel).toBeUndefined();
});

test('what lies beyond the plot is drawn at its edge', () => {
  const plot = plotOf(chill, 700);
  expect([within(plot, -5), within(plot, 300), within(plot, 9999)]).toEqual([plot.left, 300, plot.right]);
});
