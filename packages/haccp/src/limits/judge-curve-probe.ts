import { degreesOf } from '../quantity/quantities';
import { beginClock, clockDoubts, copyOfClock, doubtOfClock, type ClockSoFar } from '../thermal/clock-doubt';
import { copyOfSpeed, type CoreSpeed } from '../thermal/core-speed';
import { isBesideCore, isSetAside, isUsableReading, noteOf, SORTED, type CurveReading } from '../thermal/curve';
import { copyOfDoubt, doubtOf, noDoubt, takeBeside, type Doubt, type DoubtSoFar } from '../thermal/doubt';
import { instantWith, joinInstant, type Instant } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import { inDoubt } from './in-doubt';
import { addToLimit, copyOfLimit, judgeLimit, type OneLimitSoFar } from './one-limit-so-far';
import { notedClock, notedDoubts } from './noted-doubts';
import type { Coded, Verdict } from './verdict';
import { withClockDoubt } from './with-clock-doubt';

/** The last instant waits for the next: another reading of it may follow, and only the next shows a spike. */
export type ProbeSoFar = {
  withAll: readonly OneLimitSoFar[];
  /** From the first doubted reading on: the curve without those. */
  withoutDoubted?: readonly OneLimitSoFar[];
  doubt: DoubtSoFar;
  doubted: Partial<Record<Doubt, number>>;
  clock: ClockSoFar;
  waiting?: Instant;
  /** Set aside by a person, and later than `waiting`. */
  besideNext?: Instant;
  readings: number;
  impossible: number;
  setAside: number;
  disagreeing: number;
  wasSorted: boolean;
  from?: number;
};

export const beginProbe = (limits: readonly OneLimitSoFar[], speed: CoreSpeed): ProbeSoFar => ({
  withAll: limits,
  withoutDoubted: undefined,
  doubt: noDoubt(copyOfSpeed(speed)),
  doubted: {},
  clock: beginClock(),
  waiting: undefined,
  besideNext: undefined,
  readings: 0,
  impossible: 0,
  setAside: 0,
  disagreeing: 0,
  wasSorted: false,
  from: undefined,
});

/** False, and nothing is added, when the reading is earlier than one already there. */
export function addToProbe(probe: ProbeSoFar, reading: CurveReading): boolean {
  if (isSetAside(reading)) {
    if (isBesideCore(reading) && !addBeside(probe, reading)) return false;
    probe.setAside += 1;
  } else if (!isUsableReading(reading)) probe.impossible += 1;
  else if (probe.waiting && reading.at < probe.waiting.at) return false;
  else {
    doubtOfClock(probe.clock, reading);
    addUsable(probe, reading);
  }
  return true;
}

/** Set aside by a person; false when earlier than a reading already there. */
export function addBeside(probe: ProbeSoFar, reading: CurveReading): boolean {
  if (probe.waiting && reading.at < probe.waiting.at) return false;
  probe.besideNext = instantWith(reading);
  return true;
}

/** The reading is possible and not earlier than one already there. */
export function addUsable(probe: ProbeSoFar, reading: CurveReading): void {
  const { waiting } = probe;
  probe.readings += 1;
  if (waiting && waiting.at === reading.at) {
    if (!joinInstant(waiting, reading)) probe.disagreeing += 1;
    return;
  }
  const own = instantWith(reading);
  if (waiting) settle(probe, waiting, own);
  else probe.from = own.at;
  if (probe.besideNext) takeBeside(probe.doubt, probe.besideNext);
  probe.besideNext = undefined;
  probe.waiting = own;
}

/**
 * No reading follows. What is met only by a doubted reading is not met; nothing is, with a too fast reading or a clock
 * in doubt.
 */
export function judgeProbe(probe: ProbeSoFar, context: CurveContext): Verdict[] {
  if (probe.waiting) settle(probe, probe.waiting, undefined);
  const clock = clockDoubts(probe.clock, context.now);
  const notes = [
    ...noteOf('set-aside', probe.setAside),
    ...noteOf('cannot-be', probe.impossible),
    ...(probe.wasSorted ? [SORTED] : []),
    ...noteOf('disagreeing', probe.disagreeing),
    ...notedDoubts(probe.doubted),
    ...notedClock(clock),
    ...errorNote(context),
  ];
  return probe.withAll.map((limit, index) => {
    const verdict = judgeLimit(limit, notes, context);
    const careful = probe.withoutDoubted?.[index];
    const isSure = verdict.kind !== 'met' || !careful || judgeLimit(careful, notes, context).kind === 'met';
    const sure = isSure ? verdict : onlyWithDoubted(verdict);
    const judged = withClockDoubt(probe.doubt.isTooFast ? tooFastToBeMet(sure) : sure, clock);
    judged.restsOn = restsOnOf(probe);
    return judged;
  });
}

function settle(probe: ProbeSoFar, instant: Instant, next: Instant | undefined): void {
  const doubt = doubtOf(probe.doubt, instant, next);
  if (doubt) {
    // Nothing is met then: the verdict without the reading is not needed.
    if (!probe.doubt.isTooFast) probe.withoutDoubted ??= probe.withAll.map(copyOfLimit);
    probe.doubted[doubt] = (probe.doubted[doubt] ?? 0) + 1;
  } else if (probe.withoutDoubted) {
    for (const limit of probe.withoutDoubted) addToLimit(limit, instant);
  }
  for (const limit of probe.withAll) addToLimit(limit, instant);
}

/** A verdict is given on it while readings still come. */
export const copyOfProbe = (probe: ProbeSoFar): ProbeSoFar => ({
  withAll: probe.withAll.map(copyOfLimit),
  withoutDoubted: probe.withoutDoubted?.map(copyOfLimit),
  doubt: copyOfDoubt(probe.doubt),
  doubted: { ...probe.doubted },
  clock: copyOfClock(probe.clock),
  waiting: probe.waiting,
  besideNext: probe.besideNext,
  readings: probe.readings,
  impossible: probe.impossible,
  setAside: probe.setAside,
  disagreeing: probe.disagreeing,
  wasSorted: probe.wasSorted,
  from: probe.from,
});

const errorNote = ({ instrumentError }: CurveContext): Coded[] => {
  if (!instrumentError || instrumentError.hundredths === 0) return [];
  const { hundredths, unit } = instrumentError;
  return [{ code: 'taken-as-the-worse', figures: { error: degreesOf({ hundredths: Math.abs(hundredths), unit }) } }];
};

const onlyWithDoubted = (verdict: Verdict): Verdict => inDoubt(verdict, 'only-with-doubted');

const tooFastToBeMet = (verdict: Verdict): Verdict => (verdict.kind === 'met' ? inDoubt(verdict, 'faster-than-a-core') : verdict);

const restsOnOf = ({ readings, impossible, setAside, from, waiting }: ProbeSoFar): Verdict['restsOn'] =>
  from === undefined || !waiting ? undefined : { readings, leftOut: impossible + setAside, from, to: waiting.at };
