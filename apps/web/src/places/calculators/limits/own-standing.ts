import { dateWords } from '../../../ui/moment';
import { nameOfSet, type SetHead } from './name-of-set';

/** How an edition of one's own stands on a day: it counts, it will, or what has taken its place. */
export function standingOf(set: SetHead, sets: readonly SetHead[], today: string): string {
  const newer = sets.find(({ setId }) => setId === set.own?.replacedBy);
  if (newer && newer.validFrom <= today) return `Replaced by ${nameOfSet(newer)}`;
  if (set.validFrom > today) return `Will count from ${dateWords(set.validFrom)}`;
  return newer ? `Counts until ${nameOfSet(newer)} takes its place` : 'Counts';
}
