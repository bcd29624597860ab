import { judgeAttestation, type Attestation } from '../kinds/attestation/judge-attestation';
import { judgeCurve } from '../limits/judge-curve';
import type { AttestationLimit } from '../kinds/attestation/attestation-limit';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import type { Figures, Verdict, VerdictKind } from '../limits/verdict';
import { onCommonScale, STEPS } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import { above, boundOf } from '../quantity/bound';
import { impossibleAs } from '../quantity/possible';
import { printedAllowing } from '../quantity/printed-allowing';
import { cannotBe } from '../limits/impossible-value';
import { asGiven, printedIn, timeOf } from '../quantity/quantities';
import type { Quantity } from '../quantity/quantity';
import { massOf } from '../quantity/weigh';
import { byProbe, isUsableReading, type CurveReading } from '../thermal/curve';
import { judgeHumidity, WARM, type HumidityOption } from './judge-humidity';
import { keptPhrase, type HumidityKept } from './humidity-kept';
import { both } from './printed';

/** Instants in epoch ms; the error is the thermometer's. */
export type CookSeen = {
  readings: readonly CurveReading[];
  endedAt?: number;
  tables: readonly DwellLimit[];
  error?: Degrees;
};

const MINUTE = 60_000;
/** A large piece in a hot oven needs no humidity; FSIS-GD-2021-14, pp. 31-33. */
const HOT_OVEN = both(250, 121);
const LARGE_PIECE = { lb: { value: 10, unit: 'lb' }, kg: { value: 4.5, unit: 'kg' } } as const;
const LEAST_PERCENT = 90;

/**
 * As long as printed for the option, and only beside its rows. Cooking time runs from the first reading, or an earlier
 * time said, to the recorded end; doubt is never met.
 */
export function judgeHumidityKept(
  answer: (Attestation & { humidity?: HumidityKept }) | undefined,
  limit: AttestationLimit,
  cook: CookSeen | undefined,
): Verdict {
  if (!answer?.holds) return judgeAttestation(answer, limit);
  const kept = answer.humidity;
  const seen = { ...(kept && { kept: keptPhrase(kept) }), ...(answer.seen.trim() && { seen: answer.seen.trim() }) };
  const found = (kind: VerdictKind, finding: string, figures: Figures = {}): Verdict => ({
    ...{ kind, finding, measure: 'humidity', notes: [] },
    figures: { ...seen, ...figures },
  });
  if (!kept) return found('undetermined', 'humidity-not-recorded');
  if (kept.how === 'moisture-proof bag') return found('met', 'attested-yes');
  if (kept.how === 'large piece in a hot oven') return found(...judgeLargePiece(kept, cook?.error));
  if (kept.percent !== undefined && kept.percent < LEAST_PERCENT) {
    const least = percentOf(LEAST_PERCENT);
    return found('missed', 'humidity-too-low', { percent: percentOf(kept.percent), least });
  }
  const times = timesOf(kept, cook);
  if (!times || !cook) return found('undetermined', 'humidity-cook-unfinished');
  const humid = kept.minutes * MINUTE;
  if (humid > times.longest) return found('undetermined', 'humidity-longer-than-the-cook', { humid: timeOf(humid) });
  const { kind, finding, figures } = judgeHumidity(OPTIONS[kept.how], { cooking: times.cooking, humid, endpoint: times.endpoint });
  if (kind === 'met' && OPTIONS[kept.how] <= 2 && !isHeldWarm(cook)) {
    return found('missed', 'humidity-rows-too-cold', { least: printedIn(WARM, times.endpoint.unit) });
  }
  return found(kind, finding, figures);
}

const OPTIONS: Record<Exclude<HumidityKept['how'], 'moisture-proof bag' | 'large piece in a hot oven'>, HumidityOption> = {
  'live steam': 1,
  'sealed oven': 2,
  'humid for a quarter': 3,
  'humid throughout': 4,
};

const percentOf = (value: number): Quantity => asGiven(value, '%');

/** An oven that cannot be so hot meets nothing; the thermometer's error is taken off. */
function judgeLargePiece({ oven, piece }: LargePiece, error: Degrees | undefined): [VerdictKind, string, Figures] {
  const degrees = { hundredths: Math.round(oven.value * 100), unit: oven.unit };
  const least = piece.unit === 'kg' || piece.unit === 'g' ? LARGE_PIECE.kg : LARGE_PIECE.lb;
  if (massOf(piece) < massOf(least)) {
    return ['missed', 'humidity-piece-too-light', { least: asGiven(least.value, least.unit) }];
  }
  const by = stepsOf(error);
  const hot = { least: printedAllowing(HOT_OVEN, oven.unit, by) };
  if (above(degrees, boundOf(HOT_OVEN)) < by) return ['missed', 'humidity-oven-too-cold', hot];
  const impossible = impossibleAs('oven', degrees);
  if (!impossible) return ['met', 'humidity-needs-none', hot];
  const { kind, finding, figures } = cannotBe(impossible);
  return [kind, finding, figures];
}

type LargePiece = Extract<HumidityKept, { how: 'large piece in a hot oven' }>;
type Timed = Exclude<HumidityKept, { how: 'moisture-proof bag' | 'large piece in a hot oven' }>;

function timesOf({ from, intoOven }: Timed, cook: CookSeen | undefined) {
  const usable = cook?.readings.filter(isUsableReading) ?? [];
  const [first] = usable;
  if (!cook || !first || cook.endedAt === undefined) return undefined;
  const starts = [...usable.map(({ at }) => at), Date.parse(intoOven)];
  const begun = starts.reduce((earliest, at) => Math.min(earliest, at));
  return {
    cooking: cook.endedAt - begun,
    longest: cook.endedAt - Math.max(begun, Date.parse(from)),
    endpoint: endpointOf(usable, cook.error),
  };
}

/** Of the coldest piece: the hottest of every probe, less the thermometer's error. */
function endpointOf(readings: readonly CurveReading[], error: Degrees | undefined): Degrees {
  const hottest = [...byProbe(readings).values()].map((own) =>
    own.map(({ temperature }) => temperature).reduce((a, b) => (onCommonScale(b) > onCommonScale(a) ? b : a)),
  );
  const { hundredths, unit } = hottest.reduce((a, b) => (onCommonScale(b) < onCommonScale(a) ? b : a));
  return { hundredths: hundredths - Math.ceil(stepsOf(error) / STEPS[unit]), unit };
}

/** On the common scale. */
const stepsOf = (error: Degrees | undefined): number => (error ? Math.abs(error.hundredths) * STEPS[error.unit] : 0);

const isHeldWarm = ({ readings, tables, error }: CookSeen): boolean =>
  tables.some((table) => {
    const rows = table.rows.filter(({ at }) => boundOf(at)['°F'] >= boundOf(WARM)['°F']);
    return rows.length > 0 && judgeCurve(readings, { ...table, rows }, { ended: true, instrumentError: error }).kind === 'met';
  });
