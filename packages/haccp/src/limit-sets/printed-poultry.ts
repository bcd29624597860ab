/** One printed row: temperature in both units and twelve times, for 1 % to 12 % fat. */
export type PrintedPoultryRow = { '°F': number; '°C': number; byFat: string };
