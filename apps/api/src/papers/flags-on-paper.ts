import type { Flag } from '@larderbook/contracts';
import type { Telling } from './telling';

/** The time of entry already shows a late record. */
export const flagsOnPaper = (flags: readonly Flag[], say: Telling['say']): string[] =>
  flags.filter((flag) => flag !== 'recorded-late').map((flag) => say(flag));
