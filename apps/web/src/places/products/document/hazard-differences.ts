import { codeOf } from '@larderbook/messages';
import { changedFields, type Difference, type Speakers } from './difference';
import type { Hazard } from './plan-words';

/** Hazards have no id: the same words name the same hazard, other words another. */
export function hazardDifferences(where: string, before: readonly Hazard[], after: readonly Hazard[], speakers: Speakers): Difference[] {
  const { say, sayPlans } = speakers;
  const likelyWords = (likely: boolean) => sayPlans(likely ? 'likely' : 'not-likely');
  const wasIn = (hazards: readonly Hazard[], { what }: Hazard) => hazards.find((other) => sameWords(other.what, what));
  return [
    ...before.filter((hazard) => !wasIn(after, hazard)).map(({ what }) => ({ where, what: say('hazard-removed', { what }) })),
    ...after.flatMap((hazard) => {
      const was = wasIn(before, hazard);
      if (!was) return [{ where, what: say(hazard.likely ? 'hazard-added-likely' : 'hazard-added-unlikely', { what: hazard.what }) }];
      const { what } = hazard;
      return changedFields(
        where,
        [
          [say('hazard-kind', { what }), sayPlans(codeOf('hazard', was.kind)), sayPlans(codeOf('hazard', hazard.kind))],
          [say('hazard-likely', { what }), likelyWords(was.likely), likelyWords(hazard.likely)],
          [say('hazard-because', { what }), was.because, hazard.because],
          [say('hazard-control', { what }), was.control, hazard.control],
        ],
        speakers,
      );
    }),
  ];
}

const sameWords = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();
