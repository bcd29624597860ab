import { describe, expect, test } from 'vitest';
import { growthOver, growthSetsFor, growthRate, lethalitySets, limitSetById, type GrowthSet } from '@larderbook/haccp';

/**
 * Food Safety Authority of Ireland 2018 and NZ MPI 2016/05; ACMSF, burgers, March 2007, in a copy; Quintavalla and
 * Campanini 1991; Bhaduri et al. 1991; van Asselt and Zwietering 2006, Int J Food Microbiol 107:73-82, means, as transcribed by others.
 */
describe('D, its temperature and z as published, and what they may be used for', () => {
  test.each([
    ['Salmonella, by the meat table', 1.714, 60, 5.56, 'reference', true],
    ['Listeria monocytogenes, 70 °C for 2 min', 1 / 3, 70, 7.5, 'reference', true],
    ['Escherichia coli O157, in burgers, 70 °C for 2 min', 1 / 3, 70, 6, 'reference', false],
    ['Listeria monocytogenes, heated slowly in a meat emulsion', 12.95, 60, 7.99, 'comparison', true],
    ['Listeria monocytogenes, in liver sausage slurry', 2.4, 60, 6.2, 'comparison', true],
    ['Listeria monocytogenes, mean of many studies', 0.0871, 70, 7, 'mean', false],
    ['Listeria monocytogenes, mean of many studies, 10 % salt', 1.514, 70, 9.2, 'mean', false],
    ['Salmonella, mean of many studies', 0.1479, 70, 9.1, 'mean', false],
    ['Escherichia coli, mean of many studies', 10 ** -0.67, 70, 10.6, 'mean', false],
    ['Clostridium perfringens, vegetative, mean of many studies; spores survive cooking', 10 ** -0.42, 70, 10.3, 'mean', false],
  ])('%s: %s min at %s °C, z %s °C', (name, minutes, referenceCelsius, zCelsius, use, confirmed) => {
    const set = lethalitySets.find((one) => one.name === name);
    expect(set).toMatchObject({ referenceCelsius, zCelsius, use, source: { confirmed } });
    expect(set?.minutesPerLog).toBeCloseTo(minutes, 3);
  });

  test('no set stands without its figures here', () => {
    expect(lethalitySets).toHaveLength(10);
  });

  // Of the emulsion at 60, 63 and 66 °C, of the slurry at 57.2, 60 and 62.8 °C, in minutes.
  test.each([
    [
      [
        [60, 12.95],
        [63, 5.4],
        [66, 2.3],
      ],
      7.99,
    ],
    [
      [
        [57.2, 8.9],
        [60, 2.4],
        [62.8, 1.1],
      ],
      6.2,
    ],
  ] as const)('three D-values give the z printed beside them', (values, z) => {
    const { slope } = lineThrough(values.map(([celsius, minutes]) => [celsius, Math.log10(minutes)]));
    expect(-1 / slope).toBeCloseTo(z, 1);
  });
});

/** Least squares over lg of the printed seconds: z in °F, D at 140 °F in minutes, and how far the line is off a row. */
describe('straight lines through the printed tables, which is why the rows decide', () => {
  const rowsOf = (id: string) => {
    const limit = limitSetById('us-inspected-2021')?.rows.find((row) => row.id === id)?.limit;
    const rows = limit?.kind === 'dwell' ? limit.rows.filter(({ seconds }) => seconds > 0) : [];
    return rows.map(({ at, seconds }): readonly [number, number] => [(at['°F'] ?? NaN) / 100, seconds]);
  };

  // FSIS-GD-2021-14, Table 2, p. 35, Table 6, p. 59, Table 3, p. 37 and Table 4, p. 38; worked out beforehand.
  test.each([
    ['cooked-meat-6.5-log', 6.5, 10.011, 1.77, [-9.2, 142], [3.3, 150]],
    ['cooked-meat-7-log', 7, 10.023, 1.74, [-4.6, 136], [3.8, 135]],
    ['cooked-meat-5-log', 5, 10.023, 1.78, [-11.2, 144], [4.1, 151]],
    ['cooked-chicken-7-log-1-fat', 7, 9.78, 3.73, [-10.4, 149], [5.8, 136]],
    ['cooked-chicken-7-log-12-fat', 7, 9.53, 5.412, [-20.3, 149], [22.4, 136]],
    ['cooked-turkey-7-log-1-fat', 7, 10.96, 4.13, [-7.1, 148], [4.7, 153]],
    ['cooked-turkey-7-log-12-fat', 7, 10.63, 5.137, [-17.4, 148], [20.8, 136]],
  ] as const)('%s', (id, logs, z, atOneForty, lowest, highest) => {
    const rows = rowsOf(id);
    const { slope, at } = lineThrough(rows.map(([fahrenheit, seconds]) => [fahrenheit, Math.log10(seconds)]));
    expect(-1 / slope).toBeCloseTo(z, 2);
    expect(10 ** at(140) / 60 / logs).toBeCloseTo(atOneForty, 2);
    const off = rows.map(([fahrenheit, seconds]) => [100 * (10 ** at(fahrenheit) / seconds - 1), fahrenheit] as const);
    const sorted = off.toSorted(([a], [b]) => a - b);
    expect(sorted[0]).toEqual([expect.closeTo(lowest[0], 1), lowest[1]]);
    expect(sorted.at(-1)).toEqual([expect.closeTo(highest[0], 1), highest[1]]);
  });
});

/** Juneja, Marks, Huang and Thippareddi 2011, Food Microbiol 28:791-795, from a public collection of models. */
test.each([
  ['beef', 0.05, 10.15, 0.238, 53, 0.0699, 2.7283],
  ['chicken', 0.048, 9.74, 0.208, 52.1, 0.0105, 4.5668],
  ['pork', 0.047, 10.69, 0.252, 52.8, 0.0137, 4.304],
] as const)('growth in cooked %s: b, Tmin, c, Tmax, q0 and its lag constant', (species, b, least, c, most, q0, lag) => {
  const [set] = growthSetsFor(species);
  expect(set).toMatchObject({ b, minCelsius: least, c, maxCelsius: most, q0, source: { confirmed: false } });
  expect(Math.log(1 + 1 / q0)).toBeCloseTo(lag, 4);
});

/**
 * An independent rate: Le Marc et al. 2008, Int J Food Microbiol 128:41-50, from the same collection; natural log per
 * hour by temperature, % salt and pH. Its first state of the spores was not found, so it bounds growth without lag.
 */
describe('another group’s rate of growth', () => {
  const rate = (celsius: number, salt: number, pH: number): number => {
    const aw = 1 - (salt * (5.2471 + 0.12206 * salt)) / 1000;
    if (aw <= 0.9755) return 0;
    const warmth = (celsius - 12.2) ** 2 * -Math.expm1(0.095 * (celsius - 54.47));
    return 7.45 * warmth * (aw - 0.9755) * (2 - aw - 0.9755) * (Math.min(pH, 6.25) - 4.76);
  };

  test.each([
    [45, 0.5, 6.25, 4.203018],
    [45, 2, 6.2, 3.284307],
    [40, 2, 6.2, 2.970862],
    [35, 3, 6, 1.281537],
    [25, 2, 6.2, 0.791761],
    [45, 4, 6.2, 0.506332],
    [45, 4.25, 6.2, 0],
  ])('%s °C, %s % salt, pH %s', (celsius, salt, pH, perHour) => {
    expect(rate(celsius, salt, pH)).toBeCloseTo(perHour, 6);
  });

  // 54.4 to 27 °C on an exponential: its totals without lag, and ours, which are never far below them.
  test.each([
    [1.5, 1.89],
    [3, 3.78],
  ])('54.4 to 27 °C in %s h: at most %s log there, more here', (hours, printed) => {
    const steps = 4000;
    const at = (i: number) => 54.4 * (27 / 54.4) ** (i / steps);
    let theirs = 0;
    for (let i = 0; i < steps; i += 1) theirs += ((hours / steps) * rate(at(i + 0.5), 0.5, 6.25)) / Math.LN10;
    expect(theirs).toBeCloseTo(printed, 2);
    const [beef] = growthSetsFor('beef') as [GrowthSet];
    let ours = 0;
    for (let i = 0; i < steps; i += 1) ours += growthOver(beef, at(i), at(i + 1), hours / steps);
    expect(ours).toBeGreaterThan(printed);
    expect(growthRate(beef, 45) / (rate(45, 0.5, 6.25) / Math.LN10)).toBeLessThan(1.5);
  });
});

/** Least squares through points. */
function lineThrough(points: readonly (readonly [x: number, y: number])[]) {
  const mean = (of: (point: readonly [number, number]) => number) => points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [x, y] = [mean(([own]) => own), mean(([, own]) => own)];
  const slope = mean((point) => (point[0] - x) * (point[1] - y)) / mean((point) => (point[0] - x) ** 2);
  return { slope, at: (where: number) => y + slope * (where - x) };
}
