import type { LimitTeller, Say, WordsOf } from '@larderbook/messages';
import type { SayPlans } from './plan-words';

/** `before` stood there, `after` stands there now. */
export type Difference = { where: string; what: string; before?: string; after?: string };

export type Named = [what: string, before: string, after: string];

export type Speakers = {
  say: Say<WordsOf<'plan-versions'>>;
  sayPlans: SayPlans;
  sayProducts: Say<WordsOf<'products'>>;
  limits: LimitTeller;
};

export const changedFields = (where: string, fields: Named[], { say }: Speakers): Difference[] =>
  fields
    .filter(([, before, after]) => before !== after)
    .map(([what, before, after]) => ({ where, what, before: before || say('nothing'), after: after || say('nothing') }));
