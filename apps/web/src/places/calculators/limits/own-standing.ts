import { nameOfSet, type SetHead } from './name-of-set';
import type { SayOf } from '@larderbook/messages';

export function standingOf(set: SetHead, sets: readonly SetHead[], today: string, say: SayOf<'calculators'>): string {
  const newer = sets.find(({ setId }) => setId === set.own?.replacedBy);
  if (newer && newer.validFrom <= today) return say('replaced-by', { set: nameOfSet(newer, say) });
  if (set.validFrom > today) return say('will-count', { day: { day: set.validFrom } });
  return newer ? say('counts-until-replaced', { set: nameOfSet(newer, say) }) : say('counts');
}
