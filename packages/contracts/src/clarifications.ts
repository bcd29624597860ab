import { z } from 'zod';
import { madeBy } from './fields';

/** "as recorded" takes back what was said before. */
export const clarificationWords = ['not of the core', 'time is right', 'as recorded'] as const;
export type ClarificationWord = (typeof clarificationWords)[number];

export const clarification = z.object({
  clarificationId: z.string(),
  word: z.enum(clarificationWords),
  reason: z.string(),
  made: madeBy,
});
export type Clarification = z.output<typeof clarification>;

type Clarified = { clarifications?: Clarification[] };

/** The last word counts; undefined where it takes the others back. */
export function wordOf({ clarifications }: Clarified): Exclude<ClarificationWord, 'as recorded'> | undefined {
  const word = clarifications?.at(-1)?.word;
  return word === 'as recorded' ? undefined : word;
}

/** In the order they were recorded, each with its readings. */
export function clarificationsOf<Reading extends Clarified>(readings: readonly Reading[]): (Clarification & { readings: Reading[] })[] {
  const byId = new Map<string, Clarification & { readings: Reading[] }>();
  for (const reading of readings) {
    for (const said of reading.clarifications ?? []) {
      const known = byId.get(said.clarificationId) ?? { ...said, readings: [] };
      known.readings.push(reading);
      byId.set(said.clarificationId, known);
    }
  }
  return [...byId.values()].sort((a, b) => (a.made.recordedAt < b.made.recordedAt ? -1 : 1));
}
