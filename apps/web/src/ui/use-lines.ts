import { lines, type Place, type SayLine, type Words } from '@larderbook/messages';
import { use } from 'react';
import { useLimits, useTell } from './use-tell';
import { useVoice, wordsOnce } from './voice';

/**
 * Only the lines of the day asked about last are kept for each voice and its places, so that a tablet that stays open
 * does not grow.
 */
const known = new Map<string, { words: Words; today?: number; line: SayLine }>();

/** The first to ask waits for the words. `today` is a moment of the day whose times need no date. */
export function useLines(places: readonly Place[], today?: number): SayLine {
  const voice = useVoice();
  const asked = places.map((place) => wordsOnce(place, voice.language)); // all before any is waited for
  const { tellRemark } = useTell();
  const { sayLimit } = useLimits();
  const { language, timeZone, timeStyle } = voice;
  const tables = asked.map((each) => use(each));
  const key = [language, timeZone, timeStyle, ...places].join(' ');
  const before = known.get(key);
  if (before && before.today === today) return before.line;
  const words = before?.words ?? (Object.assign({}, ...tables) as Words);
  const line = lines(words, voice, { tellRemark, sayLimit, today });
  known.set(key, { words, today, line });
  return line;
}
