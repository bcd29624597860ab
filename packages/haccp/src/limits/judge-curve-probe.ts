import { sayDifference } from '../quantity/degrees';
import { isUsableReading, sayDisagreeing, sayImpossible, SORTED, type CurveReading } from '../thermal/curve';
import { doubtOf, type Doubt, type DoubtSoFar } from '../thermal/doubt';
import { joinInstant, type Instant } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import type { OneLimitSoFar } from './one-limit-so-far';
import { sayDoubted } from './say-doubted';
import type { Verdict } from './verdict';

/**
 * One probe, up to the last reading added. The last instant waits until the next one comes: another reading of it may
 * follow, and whether it is a spike shows only beside the one after it.
 */
export type ProbeSoFar = {
  withAll: OneLimitSoFar;
  /** Begun with the first reading in doubt: the same curve without those. */
  withoutDoubted?: OneLimitSoFar;
  doubt: DoubtSoFar;
  doubted: Partial<Record<Doubt, number>>;
  waiting?: Instant;
  readings: number;
  impossible: number;
  disagreeing: number;
  wasSorted: boolean;
  from?: number;
};

export const beginProbe = (limit: OneLimitSoFar): ProbeSoFar => ({
  withAll: limit,
  doubt: {},
  doubted: {},
  readings: 0,
  impossible: 0,
  disagreeing: 0,
  wasSorted: false,
});

/** Adds one reading. False, and nothing is added, when it is earlier than one already there. */
export function addToProbe(probe: ProbeSoFar, reading: CurveReading): boolean {
  if (!isUsableReading(reading)) {
    probe.impossible += 1;
    return true;
  }
  const { waiting } = probe;
  if (waiting && reading.at < waiting.colder.at) return false;
  probe.readings += 1;
  probe.from ??= reading.at;
  if (waiting?.colder.at === reading.at) {
    if (!joinInstant(waiting, reading)) probe.disagreeing += 1;
    return true;
  }
  if (waiting) settle(probe, waiting, reading);
  probe.waiting = { colder: reading, warmer: reading };
  return true;
}

/** The verdict as if no reading followed. What is met only with a reading in doubt is not met. */
export function judgeProbe(probe: ProbeSoFar, context: CurveContext): Verdict {
  const soFar = copyOf(probe);
  if (soFar.waiting) settle(soFar, soFar.waiting, undefined);
  const notes = [
    ...(soFar.impossible > 0 ? [sayImpossible(soFar.impossible)] : []),
    ...(soFar.wasSorted ? [SORTED] : []),
    ...(soFar.disagreeing > 0 ? [sayDisagreeing(soFar.disagreeing)] : []),
    ...sayDoubted(soFar.doubted),
    ...sayError(context),
  ];
  const verdict = soFar.withAll.judge(notes, context);
  const careful = verdict.kind === 'met' ? soFar.withoutDoubted?.judge(notes, context) : undefined;
  const restsOn = restsOnOf(soFar);
  return careful && careful.kind !== 'met' ? { ...restsOn, ...onlyWithDoubted(verdict) } : { ...restsOn, ...verdict };
}

function settle(probe: ProbeSoFar, instant: Instant, next: CurveReading | undefined): void {
  const doubt = doubtOf(probe.doubt, instant.colder, next);
  if (doubt) {
    probe.withoutDoubted ??= probe.withAll.copy();
    probe.doubted[doubt] = (probe.doubted[doubt] ?? 0) + 1;
  } else {
    probe.withoutDoubted?.add(instant);
  }
  probe.withAll.add(instant);
}

function copyOf(probe: ProbeSoFar): ProbeSoFar {
  const { out } = probe.doubt;
  return {
    ...probe,
    withAll: probe.withAll.copy(),
    withoutDoubted: probe.withoutDoubted?.copy(),
    doubt: { ...probe.doubt, out: out && { ...out } },
    doubted: { ...probe.doubted },
  };
}

const sayError = ({ instrumentError }: CurveContext): string[] =>
  instrumentError && instrumentError.hundredths !== 0
    ? [`Every reading was taken as the worse within ${sayDifference(instrumentError.hundredths, instrumentError.unit)}.`]
    : [];

const onlyWithDoubted = (verdict: Verdict): Verdict => ({
  ...verdict,
  kind: 'undetermined',
  because: 'The limit is met only with readings that can hardly be the core’s.',
  next: 'Check where the probe sits and in which unit it reads, then read the core again.',
});

function restsOnOf({ readings, impossible, from, waiting }: ProbeSoFar): Pick<Verdict, 'restsOn'> {
  if (from === undefined || !waiting) return {};
  return { restsOn: { readings, leftOut: impossible, from, to: waiting.colder.at } };
}
