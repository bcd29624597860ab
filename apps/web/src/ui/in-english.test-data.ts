import { say, type Place, type SayOf, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

/** Says the messages of a place in English, as a shop in Chicago reads them. */
export const inEnglish = <P extends Place>(place: P): SayOf<P> =>
  say(allWords[place].en as WordsOf<P>, { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' });
