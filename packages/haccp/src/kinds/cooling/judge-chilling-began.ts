import { timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { clocksDiffer } from '../../timing/flag-times';
import type { ChillingBegan } from '../../limits/curve-context';
import type { StageFound } from './cooling-findings';
import type { Figures } from '../../limits/verdict';
import { RANK } from '../../limits/worst-verdict';

/** Instants in epoch ms, durations in ms. */
export type KnownOfStart = {
  /** End of cooking. */
  startAt: number;
  now?: number;
  within: number;
  /** First reading since cooking ended that is surely below the first bound, and that bound. */
  coldFrom?: number;
  upper: Quantity;
};

/** The worst answer counts. Undefined where nobody answered. */
export const judgeChillingBegan = ({ askedAt, answers }: ChillingBegan, known: KnownOfStart): StageFound | undefined =>
  answers.map((answer) => judgeAnswer(answer, askedAt, known)).sort((a, b) => RANK[a.kind] - RANK[b.kind] || spareOf(a) - spareOf(b))[0];

const spareOf = ({ spare = 0 }: StageFound): number => spare;

type Answer = ChillingBegan['answers'][number];

/** A moment still to come when it was kept shows nothing, not even a miss. */
function judgeAnswer(answer: Answer, askedAt: string, known: KnownOfStart): StageFound {
  const { startAt, now, within } = known;
  const { at, arrivedAt = Infinity } = answer;
  if (at - Math.min(arrivedAt, now ?? Infinity) > clocksDiffer) return doubt('chill-start-to-come', { askedAt });
  const took = at - startAt;
  if (took < 0) return doubt('chill-start-before-the-end', { askedAt, took: timeOf(took) });
  const spare = within - took;
  const figures = { took: timeOf(took), within: timeOf(within), ...coldBefore(answer, known) };
  if (spare < 0) return { kind: 'missed', spare, finding: 'chill-start-too-late', figures: { ...figures, over: timeOf(spare) } };
  return { kind: 'met', spare, finding: 'chill-start-in-time', figures: { ...figures, spare: timeOf(spare) } };
}

/** A thin piece cools on the bench: a core cold before chilling raises no doubt. */
const coldBefore = ({ at }: Answer, { startAt, coldFrom, upper }: KnownOfStart): Figures =>
  coldFrom !== undefined && coldFrom < at ? { cold: timeOf(coldFrom - startAt), upper } : {};

const doubt = (finding: string, figures: Figures): StageFound => ({ kind: 'undetermined', finding, figures });
