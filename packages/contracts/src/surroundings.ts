import { z } from 'zod';
import { temperature } from './fields';
import { fault } from './fault';

/** The set point is the shop's own habit. */
export const surroundings = z.object({
  /** Readings carry this name in place of a probe's: "Air of the blast chiller". */
  name: z
    .string()
    .trim()
    .min(3, fault('name-what-it-lies-in'))
    .max(40, fault('at-most-characters', { most: 40 })),
  setPoint: temperature.optional(),
});
export type Surroundings = z.output<typeof surroundings>;

type Recorded = { takenAs: string; probes: readonly string[]; surroundings?: Surroundings };

/** No limit is judged by these readings. A probe of the plan is never taken for one. */
export const isOfSurroundings = ({ takenAs, probes, surroundings: around }: Recorded, { probe }: { probe: string }) =>
  takenAs === 'curve' && probe === around?.name && !probes.includes(probe);

export const ofProduct = <Reading extends { probe: string }>(point: Recorded, readings: readonly Reading[]): Reading[] =>
  readings.filter((reading) => !isOfSurroundings(point, reading));
