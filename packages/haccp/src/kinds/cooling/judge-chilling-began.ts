import { sayDuration } from '../../quantity/duration';
import { clocksDiffer } from '../../timing/flag-times';
import type { ChillingBegan } from '../../limits/curve-context';
import type { SaidStage } from './say-cooling';
import { RANK } from '../../limits/worst-verdict';

/** Instants are epoch ms, lengths of time ms. */
export type KnownOfStart = {
  /** When cooking ended. */
  startAt: number;
  now?: number;
  within: number;
  /** Since cooking ended, the first reading that may lie below the first bound, and that bound in words. */
  coldFrom?: number;
  upper: string;
};

/** When chilling began as it was answered: of several answers the worse counts. Undefined where nobody answered. */
export const judgeChillingBegan = ({ askedAt, answers }: ChillingBegan, known: KnownOfStart): SaidStage | undefined =>
  answers.map((answer) => judgeAnswer(answer, askedAt, known)).sort((a, b) => RANK[a.kind] - RANK[b.kind] || spareOf(a) - spareOf(b))[0];

const spareOf = ({ spare = 0 }: SaidStage): number => spare;

type Answer = ChillingBegan['answers'][number];

/** A moment that was yet to come when it was kept shows nothing, not even a miss. */
function judgeAnswer(answer: Answer, askedAt: string, known: KnownOfStart): SaidStage {
  const { startAt, now, within } = known;
  const { at, arrivedAt = Infinity } = answer;
  if (at - Math.min(arrivedAt, now ?? Infinity) > clocksDiffer) return toCome(askedAt);
  const took = at - startAt;
  if (took < 0) return beforeTheEnd(askedAt, took);
  const spare = within - took;
  const because = `Chilling began ${sayDuration(took)} after cooking; ${sayDuration(within)} are allowed.${sayCold(answer, known)}`;
  if (spare < 0) return { kind: 'missed', spare, margin: `${sayDuration(spare)} too long`, because, next: HOLD };
  return { kind: 'met', spare, margin: `${sayDuration(spare)} to spare`, because };
}

/** A thin piece cools on the bench. That a core is cold before it is chilled shows no later start, so it doubts none. */
const sayCold = ({ at }: Answer, { startAt, coldFrom, upper }: KnownOfStart): string =>
  coldFrom !== undefined && coldFrom < at
    ? ` Before that, ${sayDuration(coldFrom - startAt)} after cooking, the core was at ${upper} or below.`
    : '';

const HOLD = 'Hold the lot and follow the corrective action of the plan.';

const toCome = (askedAt: string): SaidStage => ({
  kind: 'undetermined',
  because: 'Chilling is said to have begun later than that was recorded: it shows nothing.',
  next: `Correct the time at “${askedAt}”, or hold the lot.`,
});

const beforeTheEnd = (askedAt: string, took: number): SaidStage => ({
  kind: 'undetermined',
  because: `Chilling is said to have begun ${sayDuration(took)} before cooking ended.`,
  next: `Check the two times: correct the one at “${askedAt}”, or the time cooking ended.`,
});
