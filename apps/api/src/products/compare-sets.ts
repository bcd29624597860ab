import type { compareLimitSets, InputOf, ReplyOf } from '@larderbook/contracts';
import { differencesBetween, type Condition, type Difference, type LimitRow, type LimitSet } from '@larderbook/haccp';
import { codeOf, say, write, type Voice, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { limitsIn } from '../platform/tell';
import { temperatureOf, timeHeld } from './otherwise';
import { reasonsIn } from './reasons-in';
import { headOf, knownSet, namesIn } from './show-limit-set';

type Told = { what: string; here: string; there: string };

/** Rows are matched by what they are about. Throws `no-such-set`. */
export function compareSets(
  { here: hereId, there: thereId }: InputOf<typeof compareLimitSets>,
  own: readonly LimitSet[],
  voice: Voice,
): ReplyOf<typeof compareLimitSets> {
  const [here, there] = [knownSet(hereId, own), knownSet(thereId, own)];
  const { onlyHere, onlyThere, notRead, differing } = differencesBetween(here, there);
  const told = tellerOf(voice);
  const limits = limitsIn(voice);
  const { sayName } = limits;
  const [ofHere, ofThere] = [namesIn(here, limits), namesIn(there, limits)];
  return {
    here: headOf(here, sayName),
    there: headOf(there, sayName),
    onlyHere: onlyHere.map(({ title }) => ofHere(title)),
    onlyThere: onlyThere.map(({ title }) => ofThere(title)),
    notRead: notRead.map((row) => (here.rows.includes(row) ? ofHere : ofThere)(row.title)),
    differing: differing.map(({ here: row, differences }) => ({
      rowId: row.id,
      title: ofHere(row.title),
      differences: differences.map(told),
    })),
  };
}

function tellerOf(voice: Voice): (difference: Difference) => Told {
  const { say: sayReasons, limits } = reasonsIn(voice);
  const saySets = say(allWords.calculators[voice.language] as WordsOf<'calculators'>, voice);
  const absent = sayReasons('absent');
  const figure = (limit: LimitRow['limit']) => limits.formatPrinted(limit).join('; ');
  const conditions = (all: readonly Condition[]) => all.map(limits.sayCondition).join('; ') || absent;
  const held = (seconds: number | undefined) => {
    const time = timeHeld(seconds, sayReasons);
    return time === undefined ? absent : write(time, voice);
  };
  return (one) => {
    if (one.what === 'time') return { what: write(temperatureOf(one.at), voice), here: held(one.here), there: held(one.there) };
    const what = sayReasons(`what-${one.what}`);
    if (one.what === 'figure') return { what, here: figure(one.here), there: figure(one.there) };
    if (one.what === 'conditions') return { what, here: conditions(one.here), there: conditions(one.there) };
    if (one.what === 'force') return { what, here: saySets(codeOf('force', one.here)), there: saySets(codeOf('force', one.there)) };
    return { what, here: saySets(codeOf('known', one.here)), there: saySets(codeOf('known', one.there)) };
  };
}
