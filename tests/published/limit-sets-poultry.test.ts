import { expect, test } from 'vitest';
import { limitSetById } from '@larderbook/haccp';

/** FSIS-GD-2021-14, Table 3, p. 37: chicken, °F and the time at 1 % to 12 % fat (m minutes, s seconds). */
const CHICKEN = `
136 63.3m 64.5m 65.7m 67m 68.4m 69.9m 71.4m 73m 74.8m 76.7m 78.9m 81.4m
137 50.1m 51m 52.1m 53.2m 54.3m 55.5m 56.8m 58.2m 59.7m 61.4m 63.3m 65.5m
138 39.7m 40.5m 41.3m 42.2m 43.2m 44.2m 45.3m 46.4m 47.7m 49.2m 50.9m 52.9m
139 31.6m 32.2m 32.9m 33.6m 34.4m 35.2m 36.2m 37.2m 38.3m 39.6m 41.1m 43m
140 25.2m 25.7m 26.2m 26.8m 27.5m 28.2m 29m 29.8m 30.8m 32m 33.4m 35m
141 20.1m 20.5m 21m 21.5m 22m 22.6m 23.2m 24m 24.9m 25.9m 27.1m 28.7m
142 16.1m 16.4m 16.8m 17.2m 17.6m 18.1m 18.7m 19.4m 20.1m 21m 22.1m 23.5m
143 13m 13.2m 13.5m 13.8m 14.2m 14.6m 15.1m 15.6m 16.3m 17.1m 18.1m 19.3m
144 10.4m 10.6m 10.8m 11.1m 11.4m 11.8m 12.2m 12.6m 13.2m 13.9m 14.8m 15.9m
145 8.4m 8.6m 8.7m 8.9m 9.2m 9.5m 9.8m 10.2m 10.7m 11.3m 12.1m 13m
146 6.8m 6.9m 7m 7.2m 7.4m 7.6m 7.9m 8.2m 8.6m 9.1m 9.8m 10.6m
147 5.5m 5.5m 5.6m 5.7m 5.9m 6.1m 6.3m 6.6m 6.9m 7.4m 7.9m 8.6m
148 4.4m 4.4m 4.5m 4.5m 4.7m 4.8m 5m 5.2m 5.5m 5.8m 6.3m 6.8m
149 3.5m 3.5m 3.5m 3.6m 3.6m 3.8m 3.9m 4.1m 4.3m 4.6m 4.9m 5.4m
150 2.7m 2.7m 2.7m 2.7m 2.8m 2.9m 3m 3.1m 3.3m 3.5m 3.8m 4.2m
151 2.1m 2m 2m 2.1m 2.1m 2.1m 2.2m 2.3m 2.5m 2.6m 2.9m 3.1m
152 1.5m 1.5m 1.5m 1.6m 1.6m 1.6m 1.7m 1.7m 1.8m 1.9m 2.1m 2.3m
153 1.2m 1.2m 1.2m 1.2m 1.3m 1.3m 1.3m 1.3m 1.4m 1.4m 1.4m 1.6m
154 55.9s 56.9s 58s 59.1s 1m 1m 1m 1.1m 1.1m 1.1m 1.1m 1.1m
155 44.2s 45s 45.9s 46.8s 47.7s 48.6s 49.5s 50.4s 51.4s 52.4s 53.4s 54.4s
156 35s 35.6s 36.3s 37s 37.7s 38.4s 39.2s 39.9s 40.7s 41.4s 42.2s 43s
157 27.7s 28.2s 28.7s 29.3s 29.8s 30.4s 31s 31.6s 32.2s 32.8s 33.4s 34s
158 21.9s 22.3s 22.7s 23.2s 23.6s 24s 24.5s 25s 25.4s 25.9s 26.4s 26.9s
159 17.3s 17.6s 18s 18.3s 18.7s 19s 19.4s 19.8s 20.1s 20.5s 20.9s 21.3s
160 13.7s 14s 14.2s 14.5s 14.8s 15s 15.3s 15.6s 15.9s 16.2s 16.5s 16.9s
161 10.8s 11s 11.2s 11.5s 11.7s 11.9s 12.1s 12.4s 12.6s 12.8s 13.1s 13.3s
162 0s 0s 0s 0s 0s 0s 9.6s 9.8s 10s 10.2s 10.3s 10.5s
163 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s
164 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s
165 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s`;

/** The same, Table 4, p. 38: turkey. */
const TURKEY = `
136 64m 64.3m 64.6m 64.9m 65.3m 65.8m 66.3m 66.9m 67.6m 68.4m 69.5m 70.8m
137 51.9m 52.2m 52.4m 52.8m 53.2m 53.6m 54.1m 54.7m 55.3m 56.2m 57.2m 58.5m
138 42.2m 42.5m 42.7m 43m 43.4m 43.8m 44.2m 44.8m 45.4m 46.2m 47.2m 48.5m
139 34.4m 34.6m 34.9m 35.1m 35.4m 35.8m 36.2m 36.7m 37.3m 38.1m 39.1m 40.4m
140 28.1m 28.3m 28.5m 28.7m 29m 29.3m 29.7m 30.2m 30.8m 31.5m 32.5m 33.7m
141 23m 23.2m 23.3m 23.5m 23.8m 24.1m 24.4m 24.9m 25.5m 26.2m 27.1m 28.2m
142 18.9m 19m 19.1m 19.3m 19.5m 19.8m 20.1m 20.5m 21.1m 21.7m 22.6m 23.7m
143 15.5m 15.6m 15.7m 15.9m 16.1m 16.3m 16.6m 17m 17.4m 18m 18.8m 19.8m
144 12.8m 12.8m 12.9m 13m 13.2m 13.4m 13.7m 14m 14.4m 15m 15.7m 16.6m
145 10.5m 10.6m 10.6m 10.7m 10.8m 11m 11.3m 11.5m 11.9m 12.4m 13m 13.8m
146 8.7m 8.7m 8.7m 8.8m 8.9m 9m 9.2m 9.5m 9.8m 10.2m 10.8m 11.5m
147 7.1m 7.1m 7.1m 7.2m 7.3m 7.4m 7.5m 7.7m 8m 8.4m 8.8m 9.4m
148 5.8m 5.8m 5.8m 5.8m 5.9m 6m 6.1m 6.3m 6.5m 6.8m 7.2m 7.7m
149 4.7m 4.7m 4.7m 4.7m 4.7m 4.8m 4.9m 5m 5.2m 5.4m 5.8m 6.2m
150 3.8m 3.7m 3.7m 3.7m 3.7m 3.8m 3.9m 4m 4.1m 4.3m 4.5m 4.9m
151 3m 2.9m 2.9m 2.9m 2.9m 2.9m 3m 3.1m 3.2m 3.3m 3.5m 3.8m
152 2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.4m 2.5m 2.7m 2.8m
153 1.8m 1.8m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 2.1m
154 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.6m 1.6m 1.6m
155 1.2m 1.2m 1.2m 1.2m 1.2m 1.2m 1.2m 1.3m 1.3m 1.3m 1.3m 1.3m
156 59s 59.3s 59.5s 59.8s 1m 1m 1m 1m 1m 1m 1m 1m
157 47.9s 48.1s 48.3s 48.5s 48.8s 49s 49.2s 49.5s 49.7s 49.9s 50.2s 50.4s
158 38.8s 39s 39.2s 39.4s 39.6s 39.8s 40s 40.1s 40.3s 40.5s 40.7s 40.9s
159 31.5s 31.7s 31.8s 32s 32.1s 32.3s 32.4s 32.6s 32.7s 32.9s 33s 33.2s
160 25.6s 25.7s 25.8s 26s 26.1s 26.2s 26.3s 26.4s 26.6s 26.7s 26.8s 26.9s
161 20.8s 20.9s 21s 21.1s 21.2s 21.3s 21.4s 21.5s 21.6s 21.7s 21.8s 21.9s
162 16.9s 16.9s 17s 17.1s 17.2s 17.3s 17.3s 17.4s 17.5s 17.6s 17.7s 17.7s
163 13.7s 13.7s 13.8s 13.9s 13.9s 14s 14.1s 14.1s 14.2s 14.3s 14.3s 14.4s
164 11.1s 11.2s 11.2s 11.3s 11.3s 11.4s 11.4s 11.5s 11.5s 11.6s 11.6s 11.7s
165 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s`;

const parse = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split(' '))
    .map(([fahrenheit, ...times]) => ({ fahrenheit: Number(fahrenheit), seconds: times.map(secondsOf) }));
const secondsOf = (time: string): number => Math.round(parseFloat(time) * (time.endsWith('m') ? 60 : 1) * 10) / 10;

const columnOf = (species: string, fat: number) => {
  const row = limitSetById('us-inspected-2021')?.rows.find(({ id }) => id === `cooked-${species}-7-log-${fat}-fat`);
  return row?.limit.kind === 'dwell' ? row.limit.rows.map(({ at, seconds }) => [(at['°F'] ?? NaN) / 100, seconds]) : [];
};

const fats = Array.from({ length: 12 }, (_, index) => index + 1);

test.each(fats)('chicken and turkey of %s %% fat, and the longer of both, row by row', (fat) => {
  const [chicken, turkey] = [parse(CHICKEN), parse(TURKEY)];
  const printed = (table: ReturnType<typeof parse>) => table.map((row) => [row.fahrenheit, row.seconds[fat - 1]]);
  expect(columnOf('chicken', fat)).toEqual(printed(chicken));
  expect(columnOf('turkey', fat)).toEqual(printed(turkey));
  const longer = chicken.map(({ fahrenheit, seconds }, index) => [
    fahrenheit,
    Math.max(seconds[fat - 1] ?? NaN, turkey[index]?.seconds[fat - 1] ?? NaN),
  ]);
  expect(columnOf('poultry', fat)).toEqual(longer);
});
