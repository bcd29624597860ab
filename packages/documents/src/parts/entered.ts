import { isTwoTimes } from '@larderbook/haccp';
import type { Signed } from '../sheet-data';
import type { Telling } from '../page/telling';
import { words, type Paragraph } from '../page/words';

/** "Entered 4 Sep 2025, 14:20"; nothing where both moments are one. */
export function entered({ at, enteredAt }: Pick<Signed, 'at' | 'enteredAt'>, { clock, say }: Telling): Paragraph[] {
  if (enteredAt === undefined || !isTwoTimes({ at, enteredAt })) return [];
  return [words('small', say('entered-at', { at: clock.dayAndTime(enteredAt) }))];
}

/** "4 Sep 2025, 12:00, entered 4 Sep 2025, 14:20". */
export function bothTimes({ at, enteredAt = at }: Pick<Signed, 'at' | 'enteredAt'>, { clock, say }: Telling, isZoned = false): string {
  const when = (instant: number) => (isZoned ? clock.dayAndTimeWithZone(instant) : clock.dayAndTime(instant));
  if (!isTwoTimes({ at, enteredAt })) return when(at);
  return say('stated-and-entered', { stated: when(at), entered: when(enteredAt) });
}
