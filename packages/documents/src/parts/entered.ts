import { isTwoTimes, sayBothTimes } from '@larderbook/haccp';
import type { Signed } from '../sheet-data';
import type { WallClock } from '../page/wall-clock';
import { words, type Paragraph } from '../page/words';

/** "Entered 4 Sep 2025, 14:20", under what states another moment; nothing where both are one. */
export function entered({ at, enteredAt }: Pick<Signed, 'at' | 'enteredAt'>, clock: WallClock): Paragraph[] {
  if (enteredAt === undefined || !isTwoTimes({ at, enteredAt })) return [];
  return [words('small', `Entered ${clock.dayAndTime(enteredAt)}`)];
}

/** "4 Sep 2025, 12:00, entered 4 Sep 2025, 14:20", in one sentence. */
export const bothTimes = ({ at, enteredAt = at }: Pick<Signed, 'at' | 'enteredAt'>, say: (at: number) => string): string =>
  sayBothTimes({ at, enteredAt }, say);
