import type { Flag } from '@larderbook/contracts';
import type { Telling } from './telling';

/** What was odd about an entry. That it was recorded late is said by when it was entered. */
export const flagsOnPaper = (flags: readonly Flag[], say: Telling['say']): string[] =>
  flags.filter((flag) => flag !== 'recorded-late').map((flag) => say(flag));
