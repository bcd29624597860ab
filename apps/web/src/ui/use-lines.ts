import { lines, type Place, type SayLine } from '@larderbook/messages';
import { use } from 'react';
import { useLimits, useTell } from './use-tell';
import { useVoice, wordsOnce } from './voice';

const known = new Map<string, SayLine>();

/** Says the lines of workings in the voice around, with the words of some places. The first to ask waits for them. */
export function useLines(...places: Place[]): SayLine {
  const voice = useVoice();
  const { tellRemark } = useTell();
  const { sayLimit } = useLimits();
  const { language, timeZone, timeStyle } = voice;
  const words = places.map((place) => use(wordsOnce(place, language)));
  const key = [language, timeZone, timeStyle, ...places].join(' ');
  const line = known.get(key) ?? lines(words, voice, { tellRemark, sayLimit });
  known.set(key, line);
  return line;
}
