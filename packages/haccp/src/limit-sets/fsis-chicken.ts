import type { PrintedPoultryRow } from './printed-poultry';

/**
 * Chicken, 7-log *Salmonella*: holding time by fat, 1 % to 12 % from left to right, as printed (m minutes, s seconds).
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, December 2021, Table 3,
 * p. 37.
 * Printed so, not slips: at 151 °F the time falls from 1 % to 2 % fat; at 162 °F it is 0 s only up to 6 % fat.
 */
export const chickenRows: readonly PrintedPoultryRow[] = [
  { '°F': 136, '°C': 57.8, byFat: '63.3m 64.5m 65.7m 67m 68.4m 69.9m 71.4m 73m 74.8m 76.7m 78.9m 81.4m' },
  { '°F': 137, '°C': 58.3, byFat: '50.1m 51m 52.1m 53.2m 54.3m 55.5m 56.8m 58.2m 59.7m 61.4m 63.3m 65.5m' },
  { '°F': 138, '°C': 58.9, byFat: '39.7m 40.5m 41.3m 42.2m 43.2m 44.2m 45.3m 46.4m 47.7m 49.2m 50.9m 52.9m' },
  { '°F': 139, '°C': 59.4, byFat: '31.6m 32.2m 32.9m 33.6m 34.4m 35.2m 36.2m 37.2m 38.3m 39.6m 41.1m 43m' },
  { '°F': 140, '°C': 60, byFat: '25.2m 25.7m 26.2m 26.8m 27.5m 28.2m 29m 29.8m 30.8m 32m 33.4m 35m' },
  { '°F': 141, '°C': 60.6, byFat: '20.1m 20.5m 21m 21.5m 22m 22.6m 23.2m 24m 24.9m 25.9m 27.1m 28.7m' },
  { '°F': 142, '°C': 61.1, byFat: '16.1m 16.4m 16.8m 17.2m 17.6m 18.1m 18.7m 19.4m 20.1m 21m 22.1m 23.5m' },
  { '°F': 143, '°C': 61.7, byFat: '13m 13.2m 13.5m 13.8m 14.2m 14.6m 15.1m 15.6m 16.3m 17.1m 18.1m 19.3m' },
  { '°F': 144, '°C': 62.2, byFat: '10.4m 10.6m 10.8m 11.1m 11.4m 11.8m 12.2m 12.6m 13.2m 13.9m 14.8m 15.9m' },
  { '°F': 145, '°C': 62.8, byFat: '8.4m 8.6m 8.7m 8.9m 9.2m 9.5m 9.8m 10.2m 10.7m 11.3m 12.1m 13m' },
  { '°F': 146, '°C': 63.3, byFat: '6.8m 6.9m 7m 7.2m 7.4m 7.6m 7.9m 8.2m 8.6m 9.1m 9.8m 10.6m' },
  { '°F': 147, '°C': 63.9, byFat: '5.5m 5.5m 5.6m 5.7m 5.9m 6.1m 6.3m 6.6m 6.9m 7.4m 7.9m 8.6m' },
  { '°F': 148, '°C': 64.4, byFat: '4.4m 4.4m 4.5m 4.5m 4.7m 4.8m 5m 5.2m 5.5m 5.8m 6.3m 6.8m' },
  { '°F': 149, '°C': 65, byFat: '3.5m 3.5m 3.5m 3.6m 3.6m 3.8m 3.9m 4.1m 4.3m 4.6m 4.9m 5.4m' },
  { '°F': 150, '°C': 65.6, byFat: '2.7m 2.7m 2.7m 2.7m 2.8m 2.9m 3m 3.1m 3.3m 3.5m 3.8m 4.2m' },
  { '°F': 151, '°C': 66.1, byFat: '2.1m 2m 2m 2.1m 2.1m 2.1m 2.2m 2.3m 2.5m 2.6m 2.9m 3.1m' },
  { '°F': 152, '°C': 66.7, byFat: '1.5m 1.5m 1.5m 1.6m 1.6m 1.6m 1.7m 1.7m 1.8m 1.9m 2.1m 2.3m' },
  { '°F': 153, '°C': 67.2, byFat: '1.2m 1.2m 1.2m 1.2m 1.3m 1.3m 1.3m 1.3m 1.4m 1.4m 1.4m 1.6m' },
  { '°F': 154, '°C': 67.8, byFat: '55.9s 56.9s 58s 59.1s 1m 1m 1m 1.1m 1.1m 1.1m 1.1m 1.1m' },
  { '°F': 155, '°C': 68.3, byFat: '44.2s 45s 45.9s 46.8s 47.7s 48.6s 49.5s 50.4s 51.4s 52.4s 53.4s 54.4s' },
  { '°F': 156, '°C': 68.9, byFat: '35s 35.6s 36.3s 37s 37.7s 38.4s 39.2s 39.9s 40.7s 41.4s 42.2s 43s' },
  { '°F': 157, '°C': 69.4, byFat: '27.7s 28.2s 28.7s 29.3s 29.8s 30.4s 31s 31.6s 32.2s 32.8s 33.4s 34s' },
  { '°F': 158, '°C': 70, byFat: '21.9s 22.3s 22.7s 23.2s 23.6s 24s 24.5s 25s 25.4s 25.9s 26.4s 26.9s' },
  { '°F': 159, '°C': 70.6, byFat: '17.3s 17.6s 18s 18.3s 18.7s 19s 19.4s 19.8s 20.1s 20.5s 20.9s 21.3s' },
  { '°F': 160, '°C': 71.1, byFat: '13.7s 14s 14.2s 14.5s 14.8s 15s 15.3s 15.6s 15.9s 16.2s 16.5s 16.9s' },
  { '°F': 161, '°C': 71.7, byFat: '10.8s 11s 11.2s 11.5s 11.7s 11.9s 12.1s 12.4s 12.6s 12.8s 13.1s 13.3s' },
  { '°F': 162, '°C': 72.2, byFat: '0s 0s 0s 0s 0s 0s 9.6s 9.8s 10s 10.2s 10.3s 10.5s' },
  { '°F': 163, '°C': 72.8, byFat: '0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s' },
  { '°F': 164, '°C': 73.3, byFat: '0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s' },
  { '°F': 165, '°C': 73.9, byFat: '0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s' },
];
