import { pressuresOfAir, type InputOf, type calculateBoiling } from '@larderbook/contracts';
import type { Air } from '@larderbook/haccp';

/** A pressure reduced to sea level needs the height too. */
export function airOf({ hectopascal, metres, pressureIs }: Omit<InputOf<typeof calculateBoiling>, 'unit'>): Air {
  if (hectopascal === undefined) return { from: 'height', metres: metres as number };
  if (pressureIs === pressuresOfAir[1]) {
    return { from: 'weather report', seaLevelHectopascal: hectopascal, metres: metres as number };
  }
  return { from: 'barometer', hectopascal, metres };
}
