import type { Voice } from './voice';

/** Makes something of a table of words once for each voice; it goes when the words go. */
export function byVoice<Made>(): (words: object, voice: Voice, make: () => Made) => Made {
  const known = new WeakMap<object, Map<string, Made>>();
  return (words, { language, timeStyle, timeZone }, make) => {
    const own = known.get(words) ?? new Map<string, Made>();
    known.set(words, own);
    const key = `${language} ${timeStyle} ${timeZone}`;
    const made = own.get(key) ?? make();
    own.set(key, made);
    return made;
  };
}
