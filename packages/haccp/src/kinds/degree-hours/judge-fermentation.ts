import { cannotBe } from '../../limits/impossible-value';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Verdict, VerdictKind } from '../../limits/verdict';
import { onCommonScale } from '../../quantity/convert-degrees';
import { millisecondsOf } from '../../quantity/duration';
import { above, boundOf } from '../../quantity/bound';
import { impossibleAs, POSSIBLE_TEMPERATURE } from '../../quantity/possible';
import { isUsableReading, prepareCurve, noteOf, sayReadings, type Curve, type CurveReading } from '../../thermal/curve';
import { warmedBy } from '../../thermal/warmed-by';
import { acidReached, type AcidReading } from './acid-reached';
import { addUpDegreeHours, degreeHour, type DegreeHours } from './add-up-degree-hours';
import { fermentationFault } from './fermentation-fault';
import type { FermentationClass, FermentationLimit } from './fermentation-limit';
import { sayFermentation, sayStraight, type FermentationFinding } from './say-fermentation';

export type Fermentation = {
  /** The chamber, not the meat, unless the plan says otherwise. */
  chamber: readonly CurveReading[];
  /** What its thermometer may be wrong by, on the common scale. */
  error?: number;
  acid: readonly AcidReading[];
  /** When fermentation began, as recorded (epoch ms); without it nothing is met. */
  startAt?: number;
  /** The operator declared it finished. */
  ended: boolean;
};

/**
 * Degree-hours of the chamber until the pH is down, against the class of the hottest it was. A later, warmer reading
 * may bring a stricter class, so that nothing is met before the pH is down. Compared exactly.
 */
export function judgeFermentation(fermentation: Fermentation, limit: FermentationLimit): Verdict {
  const fault = fermentationFault(limit);
  const { warm, tooCold } = withoutTooCold(fermentation.chamber);
  const chamber = warmedBy(fermentation.error ?? 0, warm);
  const curve = prepareCurve(chamber);
  const acid = acidReached(fermentation.acid, limit.pH);
  const cannotBeTrue = acid.leftOut === 0 ? [] : [`${acid.leftOut} of the pH readings left out: they cannot be true.`];
  const leftOut = [...cannotBeTrue, ...noteOf('set-aside', acid.setAside)];
  const pieces = acid.notShownOf.map((piece) => piece || 'the piece without a name');
  const notShown = pieces.map((piece) => `No reading shows the pH down in ${piece}.`);
  const shared = { source: limit.source, notes: [...curve.notes, ...sayTooCold(tooCold), ...leftOut, ...notShown] };
  if (fault) return { ...shared, ...unusableLimit(fault), limit: 'no usable limit' };

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
  const doubted =
    finding === 'in time' && tooHot ? { ...cannotBe(`${impossibleAs('chamber', tooHot.temperature)}`), margin: undefined } : {};
  const notes = [...shared.notes, ...sayStraight(sum, limit.base.unit)];
  return { ...shared, notes, kind: VERDICT_OF[finding], ...sayFermentation(finding, sum, limit, allowed, curve), ...doubted };
}

/** Colder than a chamber can ferment, as it was read, is a gap, not time below the base. What is too hot stays, against the lot. */
function withoutTooCold(readings: readonly CurveReading[]) {
  const isTooCold = (reading: CurveReading) => isUsableReading(reading) && above(reading.temperature, COLDEST_CHAMBER) < 0;
  const tooCold = readings.filter(isTooCold);
  return { tooCold, warm: tooCold.length > 0 ? readings.filter((reading) => !isTooCold(reading)) : readings };
}

const COLDEST_CHAMBER = boundOf(POSSIBLE_TEMPERATURE.chamber.least);
const HOTTEST_CHAMBER = boundOf(POSSIBLE_TEMPERATURE.chamber.most);

const isTooHot = (reading: CurveReading): boolean => isUsableReading(reading) && above(reading.temperature, HOTTEST_CHAMBER) > 0;

const sayTooCold = (readings: readonly CurveReading[]): string[] =>
  readings.slice(0, 1).map(({ temperature }) => {
    const count = `${sayReadings(readings.length)} left out`;
    return `${count}: ${impossibleAs('chamber', temperature)} Was it ${temperature.unit === '°F' ? '°C' : '°F'}?`;
  });

/** The time at either end without a reading of the chamber; endless where the start is not recorded. */
function endsOf({ warmer }: Curve, startAt = NaN, reachedAt?: number) {
  const [first, last] = [warmer[0], warmer[warmer.length - 1]];
  if (!first || !last) return { lead: 0, tail: 0 };
  const isUnknown = !Number.isFinite(startAt) || (reachedAt !== undefined && reachedAt < first.at);
  return {
    lead: isUnknown ? Infinity : Math.max(0, first.at - startAt),
    tail: Math.max(0, (reachedAt ?? last.at) - last.at),
  };
}

/** A sound limit has a last class without a top, which holds whatever is hotter. */
function classOf({ classes }: FermentationLimit, hottest: number): FermentationClass {
  const holds = ({ top, isTopIncluded }: FermentationClass) => {
    const over = hottest - (top ? onCommonScale(top) : Infinity);
    return isTopIncluded ? over <= 0 : over < 0;
  };
  return classes.find(holds) as FermentationClass;
}

type Known = { hasStart: boolean; isCovered: boolean; hasReadings: boolean; isDown: boolean; ended: boolean };

function findingOf(sum: DegreeHours, most: bigint, known: Known): FermentationFinding {
  if (!known.hasReadings) return 'no readings';
  if (sum.sure > most) return 'too many';
  if (!known.isDown) return known.ended ? 'never down' : 'running';
  if (!known.hasStart) return 'no start';
  if (!known.isCovered) return 'not covered';
  return sum.most <= most ? 'in time' : 'not shown';
}

const VERDICT_OF: Record<FermentationFinding, VerdictKind> = {
  'in time': 'met',
  'too many': 'missed',
  'no readings': 'undetermined',
  'never down': 'undetermined',
  running: 'undetermined',
  'no start': 'undetermined',
  'not covered': 'undetermined',
  'not shown': 'undetermined',
};
