import { lines, type Place, type SayLine } from '@larderbook/messages';
import { use } from 'react';
import { useLimits, useTell } from './use-tell';
import { useVoice, wordsOnce } from './voice';

const known = new Map<string, SayLine>();

/**
 * Says the lines of workings in the voice around, with the words of some places. The first to ask waits for them.
 * @param today a moment of the day whose times need no day beside them
 */
export function useLines(places: readonly Place[], today?: number): SayLine {
  const voice = useVoice();
  const { tellRemark } = useTell();
  const { sayLimit } = useLimits();
  const { language, timeZone, timeStyle } = voice;
  const words = places.map((place) => use(wordsOnce(place, language)));
  const key = [language, timeZone, timeStyle, today, ...places].join(' ');
  const line = known.get(key) ?? lines(words, voice, { tellRemark, sayLimit, today });
  known.set(key, line);
  return line;
}
