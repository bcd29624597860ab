import { changedFields, type Difference } from './difference';
import { hazardKindWords, likelyWords, type Hazard } from './plan-words';

/** Hazards have no number of their own: the same words name the same hazard, and other words another one. */
export function hazardDifferences(where: string, before: readonly Hazard[], after: readonly Hazard[]): Difference[] {
  const wasIn = (hazards: readonly Hazard[], { what }: Hazard) => hazards.find((other) => sameWords(other.what, what));
  return [
    ...before.filter((hazard) => !wasIn(after, hazard)).map(({ what }) => ({ where, what: `Hazard removed: ${what}.` })),
    ...after.flatMap((hazard) => {
      const was = wasIn(before, hazard);
      if (!was) return [{ where, what: `Hazard added: ${hazard.what}, ${likelyWords(hazard.likely).toLowerCase()}.` }];
      return changedFields(where, [
        [`${hazard.what}: kind`, hazardKindWords[was.kind], hazardKindWords[hazard.kind]],
        [`${hazard.what}: likely to occur`, likelyWords(was.likely), likelyWords(hazard.likely)],
        [`${hazard.what}: because`, was.because, hazard.because],
        [`${hazard.what}: control`, was.control, hazard.control],
      ]);
    }),
  ];
}

const sameWords = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();
