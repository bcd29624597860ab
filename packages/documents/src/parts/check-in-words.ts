import type { CheckData } from '../entry-data';
import { bothTimes } from './entered';
import type { Telling } from '../page/telling';

/** "Checked 1 Sep 2025, 08:00, by Nora Vale: …" */
export function checkInWords({ by: who, result, failed, later, ...stated }: CheckData, telling: Telling): string {
  const said = { when: bothTimes(stated, telling), who, result };
  if (later) return telling.say(failed ? 'checked-later-by-failed' : 'checked-later-by', said);
  return telling.say(failed ? 'checked-by-failed' : 'checked-by', said);
}
