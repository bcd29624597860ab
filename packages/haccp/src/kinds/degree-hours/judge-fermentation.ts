import { cannotBe, figuresOf } from '../../limits/impossible-value';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Coded, Figure, Verdict, VerdictKind } from '../../limits/verdict';
import { onCommonScale } from '../../quantity/convert-degrees';
import { millisecondsOf } from '../../quantity/duration';
import { above, boundOf } from '../../quantity/bound';
import { impossibleAs, POSSIBLE_TEMPERATURE, type Impossible } from '../../quantity/possible';
import { isUsableReading, prepareCurve, noteOf, type Curve, type CurveReading } from '../../thermal/curve';
import { warmedBy } from '../../thermal/warmed-by';
import { acidReached, type Acid, type AcidReading } from './acid-reached';
import { addUpDegreeHours, degreeHour, type DegreeHours } from './add-up-degree-hours';
import { fermentationFault } from './fermentation-fault';
import type { FermentationClass, FermentationLimit } from './fermentation-limit';
import { fermentationFound, notedStraight, type FermentationFinding } from './fermentation-findings';

export type Fermentation = {
  /** Not the meat, unless the plan says otherwise. */
  chamber: readonly CurveReading[];
  /** Error of its thermometer, on the common scale. */
  error?: number;
  acid: readonly AcidReading[];
  /** Recorded begin (epoch ms); without it nothing is met. */
  startAt?: number;
  /** Declared by the operator. */
  ended: boolean;
};

/**
 * By the class of the hottest chamber reading. A later, warmer one may bring a stricter class: nothing is met before
 * the pH is down. Compared exactly.
 */
export function judgeFermentation(fermentation: Fermentation, limit: FermentationLimit): Verdict {
  const fault = fermentationFault(limit);
  const { warm, tooCold } = withoutTooCold(fermentation.chamber);
  const chamber = warmedBy(fermentation.error ?? 0, warm);
  const curve = prepareCurve(chamber);
  const acid = acidReached(fermentation.acid, limit.pH);
  const notes = [...curve.notes, ...notedTooCold(tooCold), ...notedAcid(acid)];
  if (fault) return { ...unusableLimit(fault), notes };

  const longestGap = millisecondsOf(limit.longestGapSeconds);
  const base = onCommonScale(limit.base);
  const ends = endsOf(curve, fermentation.startAt, acid.reachedAt);
  const sum = addUpDegreeHours(curve, base, longestGap, {
    until: acid.reachedAt ?? Infinity,
    lead: ends.lead <= longestGap ? ends.lead : 0,
    tail: ends.tail <= longestGap ? ends.tail : 0,
  });
  const allowed = classOf(limit, sum.hottest);
  const finding = findingOf(sum, BigInt(allowed.most) * degreeHour(limit.base.unit), {
    hasStart: Number.isFinite(fermentation.startAt),
    isCovered: ends.lead <= longestGap && ends.tail <= longestGap,
    hasReadings: curve.warmer.length > 0,
    isDown: acid.reachedAt !== undefined,
    ended: fermentation.ended,
  });
  const tooHot = chamber.find((one) => isTooHot(one) && one.at <= (acid.reachedAt ?? Infinity));
  const found = fermentationFound(finding, sum, limit, allowed, curve);
  const impossible = finding === 'in-time' && tooHot ? impossibleAs('chamber', tooHot.temperature) : undefined;
  const all = [...notes, ...notedStraight(sum, limit.base.unit)];
  if (!impossible) return { ...found, kind: VERDICT_OF[finding], notes: all };
  const { most, hottest } = found.figures as { most: Figure; hottest: Figure };
  const doubt = cannotBe(impossible);
  return { ...found, ...doubt, figures: { ...doubt.figures, most, hottest }, notes: all };
}

function notedAcid({ leftOut, setAside, notShownOf }: Acid): Coded[] {
  return [
    ...(leftOut === 0 ? [] : [{ code: 'acid-left-out', figures: { count: leftOut } }]),
    ...noteOf('set-aside', setAside),
    ...notShownOf.map((piece): Coded => (piece ? { code: 'acid-not-shown', figures: { piece } } : { code: 'acid-not-shown-nameless' })),
  ];
}

/** A reading too cold to ferment is a gap, not time below the base; a too hot one stays, against the lot. */
function withoutTooCold(readings: readonly CurveReading[]) {
  const isTooCold = (reading: CurveReading) => isUsableReading(reading) && above(reading.temperature, COLDEST_CHAMBER) < 0;
  const tooCold = readings.filter(isTooCold);
  return { tooCold, warm: tooCold.length > 0 ? readings.filter((reading) => !isTooCold(reading)) : readings };
}

const COLDEST_CHAMBER = boundOf(POSSIBLE_TEMPERATURE.chamber.least);
const HOTTEST_CHAMBER = boundOf(POSSIBLE_TEMPERATURE.chamber.most);

const isTooHot = (reading: CurveReading): boolean => isUsableReading(reading) && above(reading.temperature, HOTTEST_CHAMBER) > 0;

const notedTooCold = (readings: readonly CurveReading[]): Coded[] =>
  readings.slice(0, 1).map(({ temperature }) => ({
    code: `chamber-too-cold-in-${temperature.unit === '°F' ? 'fahrenheit' : 'celsius'}`,
    figures: { ...figuresOf(impossibleAs('chamber', temperature) as Impossible), count: readings.length },
  }));

/** Without a reading of the chamber; Infinity where the start is not recorded. */
function endsOf({ warmer }: Curve, startAt = NaN, reachedAt?: number) {
  const [first, last] = [warmer[0], warmer[warmer.length - 1]];
  if (!first || !last) return { lead: 0, tail: 0 };
  const isUnknown = !Number.isFinite(startAt) || (reachedAt !== undefined && reachedAt < first.at);
  return {
    lead: isUnknown ? Infinity : Math.max(0, first.at - startAt),
    tail: Math.max(0, (reachedAt ?? last.at) - last.at),
  };
}

/** A sound limit's last class has no top. */
function classOf({ classes }: FermentationLimit, hottest: number): FermentationClass {
  const holds = ({ top, isTopIncluded }: FermentationClass) => {
    const over = hottest - (top ? onCommonScale(top) : Infinity);
    return isTopIncluded ? over <= 0 : over < 0;
  };
  return classes.find(holds) as FermentationClass;
}

type Known = { hasStart: boolean; isCovered: boolean; hasReadings: boolean; isDown: boolean; ended: boolean };

function findingOf(sum: DegreeHours, most: bigint, known: Known): FermentationFinding {
  if (!known.hasReadings) return 'no-readings';
  if (sum.sure > most) return 'too-many';
  if (!known.isDown) return known.ended ? 'never-down' : 'running';
  if (!known.hasStart) return 'no-start';
  if (!known.isCovered) return 'not-covered';
  return sum.most <= most ? 'in-time' : 'not-shown';
}

const VERDICT_OF: Record<FermentationFinding, VerdictKind> = {
  'in-time': 'met',
  'too-many': 'missed',
  'no-readings': 'undetermined',
  'never-down': 'undetermined',
  running: 'undetermined',
  'no-start': 'undetermined',
  'not-covered': 'undetermined',
  'not-shown': 'undetermined',
};
