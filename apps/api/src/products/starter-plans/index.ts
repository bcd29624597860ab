import { say, type Voice, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { cookChill } from './cook-chill';
import { curedDried } from './cured-dried';
import { curedSmokedCooked } from './cured-smoked-cooked';
import { roast } from './roast';
import { copyOf } from './starter-plan';
import { stirredKettle } from './stirred-kettle';

const starters = [curedSmokedCooked, cookChill, stirredKettle, roast, curedDried] as const;

/** Each copy gets fresh ids, so that two plans never share a control point. */
export function listStarters(voice: Voice) {
  const sayStarter = say(allWords['starter-plans'][voice.language] as WordsOf<'starter-plans'>, voice);
  return {
    starters: starters.map((write) => {
      const starter = write(sayStarter);
      return { process: starter.process, title: starter.title, about: starter.about, content: copyOf(starter) };
    }),
  };
}
