import type { PrintedPoultryRow } from './printed-poultry';

/**
 * Turkey, 7-log *Salmonella*: holding time by fat, 1 % to 12 % from left to right, as printed (m minutes, s seconds).
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, December 2021, Table 4,
 * p. 38.
 * Printed so, not slips: at 150 and 151 °F the time falls from 1 % to 2 % fat.
 */
export const turkeyRows: readonly PrintedPoultryRow[] = [
  { '°F': 136, '°C': 57.8, byFat: '64m 64.3m 64.6m 64.9m 65.3m 65.8m 66.3m 66.9m 67.6m 68.4m 69.5m 70.8m' },
  { '°F': 137, '°C': 58.3, byFat: '51.9m 52.2m 52.4m 52.8m 53.2m 53.6m 54.1m 54.7m 55.3m 56.2m 57.2m 58.5m' },
  { '°F': 138, '°C': 58.9, byFat: '42.2m 42.5m 42.7m 43m 43.4m 43.8m 44.2m 44.8m 45.4m 46.2m 47.2m 48.5m' },
  { '°F': 139, '°C': 59.4, byFat: '34.4m 34.6m 34.9m 35.1m 35.4m 35.8m 36.2m 36.7m 37.3m 38.1m 39.1m 40.4m' },
  { '°F': 140, '°C': 60, byFat: '28.1m 28.3m 28.5m 28.7m 29m 29.3m 29.7m 30.2m 30.8m 31.5m 32.5m 33.7m' },
  { '°F': 141, '°C': 60.6, byFat: '23m 23.2m 23.3m 23.5m 23.8m 24.1m 24.4m 24.9m 25.5m 26.2m 27.1m 28.2m' },
  { '°F': 142, '°C': 61.1, byFat: '18.9m 19m 19.1m 19.3m 19.5m 19.8m 20.1m 20.5m 21.1m 21.7m 22.6m 23.7m' },
  { '°F': 143, '°C': 61.7, byFat: '15.5m 15.6m 15.7m 15.9m 16.1m 16.3m 16.6m 17m 17.4m 18m 18.8m 19.8m' },
  { '°F': 144, '°C': 62.2, byFat: '12.8m 12.8m 12.9m 13m 13.2m 13.4m 13.7m 14m 14.4m 15m 15.7m 16.6m' },
  { '°F': 145, '°C': 62.8, byFat: '10.5m 10.6m 10.6m 10.7m 10.8m 11m 11.3m 11.5m 11.9m 12.4m 13m 13.8m' },
  { '°F': 146, '°C': 63.3, byFat: '8.7m 8.7m 8.7m 8.8m 8.9m 9m 9.2m 9.5m 9.8m 10.2m 10.8m 11.5m' },
  { '°F': 147, '°C': 63.9, byFat: '7.1m 7.1m 7.1m 7.2m 7.3m 7.4m 7.5m 7.7m 8m 8.4m 8.8m 9.4m' },
  { '°F': 148, '°C': 64.4, byFat: '5.8m 5.8m 5.8m 5.8m 5.9m 6m 6.1m 6.3m 6.5m 6.8m 7.2m 7.7m' },
  { '°F': 149, '°C': 65, byFat: '4.7m 4.7m 4.7m 4.7m 4.7m 4.8m 4.9m 5m 5.2m 5.4m 5.8m 6.2m' },
  { '°F': 150, '°C': 65.6, byFat: '3.8m 3.7m 3.7m 3.7m 3.7m 3.8m 3.9m 4m 4.1m 4.3m 4.5m 4.9m' },
  { '°F': 151, '°C': 66.1, byFat: '3m 2.9m 2.9m 2.9m 2.9m 2.9m 3m 3.1m 3.2m 3.3m 3.5m 3.8m' },
  { '°F': 152, '°C': 66.7, byFat: '2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.3m 2.4m 2.5m 2.7m 2.8m' },
  { '°F': 153, '°C': 67.2, byFat: '1.8m 1.8m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 1.9m 2.1m' },
  { '°F': 154, '°C': 67.8, byFat: '1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.5m 1.6m 1.6m 1.6m' },
  { '°F': 155, '°C': 68.3, byFat: '1.2m 1.2m 1.2m 1.2m 1.2m 1.2m 1.2m 1.3m 1.3m 1.3m 1.3m 1.3m' },
  { '°F': 156, '°C': 68.9, byFat: '59s 59.3s 59.5s 59.8s 1m 1m 1m 1m 1m 1m 1m 1m' },
  { '°F': 157, '°C': 69.4, byFat: '47.9s 48.1s 48.3s 48.5s 48.8s 49s 49.2s 49.5s 49.7s 49.9s 50.2s 50.4s' },
  { '°F': 158, '°C': 70, byFat: '38.8s 39s 39.2s 39.4s 39.6s 39.8s 40s 40.1s 40.3s 40.5s 40.7s 40.9s' },
  { '°F': 159, '°C': 70.6, byFat: '31.5s 31.7s 31.8s 32s 32.1s 32.3s 32.4s 32.6s 32.7s 32.9s 33s 33.2s' },
  { '°F': 160, '°C': 71.1, byFat: '25.6s 25.7s 25.8s 26s 26.1s 26.2s 26.3s 26.4s 26.6s 26.7s 26.8s 26.9s' },
  { '°F': 161, '°C': 71.7, byFat: '20.8s 20.9s 21s 21.1s 21.2s 21.3s 21.4s 21.5s 21.6s 21.7s 21.8s 21.9s' },
  { '°F': 162, '°C': 72.2, byFat: '16.9s 16.9s 17s 17.1s 17.2s 17.3s 17.3s 17.4s 17.5s 17.6s 17.7s 17.7s' },
  { '°F': 163, '°C': 72.8, byFat: '13.7s 13.7s 13.8s 13.9s 13.9s 14s 14.1s 14.1s 14.2s 14.3s 14.3s 14.4s' },
  { '°F': 164, '°C': 73.3, byFat: '11.1s 11.2s 11.2s 11.3s 11.3s 11.4s 11.4s 11.5s 11.5s 11.6s 11.6s 11.7s' },
  { '°F': 165, '°C': 73.9, byFat: '0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s 0s' },
];
