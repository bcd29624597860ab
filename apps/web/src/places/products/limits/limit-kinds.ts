import type { LimitKind } from '@larderbook/haccp';

export const limitKindWords: Record<LimitKind, { name: string; detail: string }> = {
  range: { name: 'A value within bounds', detail: 'a temperature, pH, water activity or percentage' },
  concentration: { name: 'Ingoing concentration', detail: 'ppm on the meat block, from the weighings' },
  dwell: { name: 'Time held at a temperature', detail: 'a table of temperatures and times; one row is enough' },
  cooling: { name: 'Cooling in stages', detail: 'from one temperature to another, in so much time' },
  bandTime: { name: 'Time between two temperatures', detail: 'at most so long in all, as while warming up' },
  lethality: { name: 'Logs killed', detail: 'added up over the whole cook; a process authority supports it' },
  growth: {
    name: 'Predicted growth',
    detail: 'C. perfringens while cooling, to screen deviations; as a limit it may hold a chill that is exactly option 1',
  },
  degreeHours: { name: 'Degree-hours', detail: 'of the chamber until the pH is down, for fermented sausage' },
  weightLoss: { name: 'Loss of weight', detail: 'of marked pieces since the start, for dried sausage' },
  freezing: { name: 'Frozen long enough', detail: 'pork against trichinae, by its centre or by the freezer' },
  figure: { name: 'An analysed figure', detail: 'fat, moisture to protein, salt in the water phase' },
  attestation: { name: 'A statement', detail: 'confirmed with what was seen' },
};
