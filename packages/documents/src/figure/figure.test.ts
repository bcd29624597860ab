import { describe, expect, test } from 'vitest';
import { clockFor } from '@larderbook/messages';
import { lotRecord } from '../lot-record';
import { readBack } from '../read-back.test-data';
import type { FigureData } from '../lot-record-data';
import { aLotRecord } from '../lot-record.test-data';
import { tellingOf } from '../page/telling';
import { aSheet, at } from '../samples.test-data';
import { altText } from './alt-text';
import { spread } from './spread';
import { thinOut } from './thin-out';
import { degreeTicks, timeTicks } from './ticks';

describe('the figure of a curve', () => {
  test('names its limits, its probes and its stages with the time they took', async () => {
    const { text } = await readBack(lotRecord(aLotRecord()));
    for (const said of [
      'Core temperature, chilling',
      'probe 1, middle of the rack',
      'probe 2, lower rack',
      '≤ 80 °F within 1.5 h',
      '≤ 40 °F within 5 h more',
      '130 → 80 °F: missed',
      '2 h 15 min of 1 h 30 min',
      '3 h 0 min of 5 h',
      '140 °F',
    ])
      expect(text).toContain(said);
  });

  test('says what its marks mean, and names each line of what adds up', async () => {
    const { text } = await readBack(lotRecord(aLotRecord()));
    for (const said of [
      'A bracket on a limit spans the two readings',
      'A cross: passed as a core cools',
      'Dotted about a limit',
      'Fine dots: what the product lies in',
      'Lethality so far, log10',
      'full line: about 6.5 log (Salmonella',
      'dashed: about 2 log',
    ])
      expect(text.replace(/\s+/g, ' ')).toContain(said);
    expect(text).not.toContain('Hatched');
  });

  test('of a stage that runs shows when it is expected, as advice', async () => {
    const arrival = { label: '80 °F', value: 80, earliest: at(4, 17, 40), best: at(4, 17, 50), state: 'at risk' };
    const text = await printed({ arrival });
    expect(text).toContain('Hatched: 80 °F expected, at risk; advice, never acceptance.');
    expect(await printed({ arrival: { ...arrival, latest: at(4, 18), best: at(4, 23) } })).toContain('Hatched');
    expect(await printed({ arrival: { ...arrival, best: undefined } })).toContain('Hatched');
  });

  test('with none of it says nothing of it', async () => {
    const text = await printed({ crossings: [], surroundings: [], panel: { title: 'Lethality', lines: [] }, limits: [] });
    expect(text).not.toMatch(/A bracket|Fine dots|Hatched|Lethality|Dotted/);
  });

  test('is said in words to whoever does not see it', () => {
    const [, chill] = aLotRecord().controlPoints.flatMap(({ figures = [] }) => figures);
    if (!chill) throw new Error('the sample has two figures');
    const arrival = { label: '40 °F', value: 40, earliest: at(4, 17, 40), state: 'on course' };
    const said = altText({ ...chill, arrival }, tellingOf(aSheet()));
    expect(said).toContain('130 °F passed between');
    expect(said).toMatch(/40 °F expected from .*, on course/);
  });

  test('is left out while nothing was measured', async () => {
    const { controlPoints, ...lot } = aLotRecord();
    const unmeasured = controlPoints.map((point) => ({ ...point, figures: point.figures?.map((each) => ({ ...each, series: [] })) }));
    const { text } = await readBack(lotRecord({ ...lot, controlPoints: unmeasured }));
    expect(text).not.toContain('Core temperature, chilling');
  });

  test('of a whole day read every second costs no more paper than what can be seen', async () => {
    const {
      controlPoints: [point],
      ...lot
    } = aLotRecord();
    if (!point) throw new Error('the sample has a control point');
    const points = Array.from({ length: 86_400 }, (_each, second) => ({ at: second * 1000, value: 60 + 40 * Math.sin(second / 900) }));
    const figures = [
      {
        title: 'Logger',
        unit: '°F' as const,
        series: [{ label: 'logger', points }],
        limits: [],
        stages: [],
      },
    ];
    const { bytes } = await readBack(lotRecord({ ...lot, controlPoints: [{ ...point, figures }] }));
    expect(bytes.length).toBeLessThan(200_000);
  });
});

/** The words of a lot record with one figure, changed as said. */
async function printed(changes: Partial<FigureData>): Promise<string> {
  const { controlPoints, ...lot } = aLotRecord();
  const point = controlPoints.find(({ figures = [] }) => figures.length > 0);
  if (!point) throw new Error('the sample has a figure');
  const figures = point.figures?.slice(0, 1).map((each) => ({ ...each, ...changes }));
  const { text } = await readBack(lotRecord({ ...lot, controlPoints: [{ ...point, figures }] }));
  return text.replace(/\s+/g, ' ');
}

describe('ticks', () => {
  test('stand at round degrees', () => {
    expect(degreeTicks(37.2, 152.9, 8)).toEqual([40, 60, 80, 100, 120, 140]);
    expect(degreeTicks(-3, 3, 8)).toEqual([-3, -2, -1, 0, 1, 2, 3]);
  });

  test('stand at round hours of the wall clock, wherever the zone lies', () => {
    const clock = clockFor({ language: 'en', timeZone: 'Asia/Kolkata', timeStyle: 'international' });
    const from = Date.UTC(2025, 8, 4, 3, 17);
    expect(timeTicks(from, from + 4 * 3_600_000, 5, clock).map((tick) => clock.time(tick))).toEqual(['09:00', '10:00', '11:00', '12:00']);
  });
});

test('a curve that is thinned out keeps its highest and lowest point', () => {
  const points = Array.from({ length: 10_000 }, (_each, index) => ({ x: index / 100, y: Math.sin(index / 30) }));
  points[5001] = { x: 50.01, y: 9 };
  points[7002] = { x: 70.02, y: -9 };
  const kept = thinOut(points, 0.5);
  expect(kept.length).toBeLessThan(1000);
  expect(kept).toContainEqual({ x: 50.01, y: 9 });
  expect(kept).toContainEqual({ x: 70.02, y: -9 });
  expect([kept[0], kept.at(-1)]).toEqual([points[0], points.at(-1)]);
});

test('names that would stand on one another are moved apart, others stay', () => {
  const [first = 0, second = 0, third = 0] = spread([100, 103, 160], [10, 10, 10]);
  expect(second - first).toBeCloseTo(10);
  expect(first + second).toBeCloseTo(203);
  expect(third).toBe(160);
});
