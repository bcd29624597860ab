import { cookChill } from './cook-chill';
import { curedDried } from './cured-dried';
import { curedSmokedCooked } from './cured-smoked-cooked';
import { roast } from './roast';
import { copyOf, type StarterPlan } from './starter-plan';
import { stirredKettle } from './stirred-kettle';

const starters: readonly StarterPlan[] = [curedSmokedCooked, cookChill, stirredKettle, roast, curedDried];

/** The plans to start from, each as a copy under fresh ids, so that two plans never share a control point. */
export const listStarters = () => ({
  starters: starters.map((starter) => ({
    process: starter.process,
    title: starter.title,
    about: starter.about,
    content: copyOf(starter),
  })),
});
