import { judgeAttestation, type Attestation } from '../kinds/attestation/judge-attestation';
import { judgeCurve } from '../limits/judge-curve';
import type { AttestationLimit } from '../kinds/attestation/attestation-limit';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import type { Verdict } from '../limits/verdict';
import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import { above, boundOf } from '../quantity/bound';
import { massOf } from '../quantity/weigh';
import { byProbe, isUsableReading, type CurveReading } from '../thermal/curve';
import { judgeHumidity, type HumidityOption } from './judge-humidity';
import { sayHumidityKept, type HumidityKept } from './humidity-kept';
import { both } from './printed';

/** The cook that humidity was kept in. Instants in epoch ms; the error is the thermometer's. */
export type CookSeen = {
  readings: readonly CurveReading[];
  endedAt?: number;
  tables: readonly DwellLimit[];
  error?: Degrees;
};

const MINUTE = 60_000;
/** Steam and a sealed oven are printed for rows from here on; FSIS-GD-2021-14, Table 1, p. 26. */
const WARM_ROWS = boundOf(both(145, 62.8));
/** A large piece in a hot oven needs no humidity; FSIS-GD-2021-14, pp. 31-33. */
const HOT_OVEN = boundOf(both(250, 121));
const LARGE_PIECES = [massOf({ value: 10, unit: 'lb' }), massOf({ value: 4.5, unit: 'kg' })];
const LEAST_PERCENT = 90;

/**
 * How humidity was kept, with the cook it was kept in: for as long as is printed for that option, and only beside the
 * rows the option is printed for. Cooking time runs from the first reading, or the earlier time said, to the recorded
 * end; doubt is never met.
 */
export function judgeHumidityKept(
  answer: (Attestation & { humidity?: HumidityKept }) | undefined,
  limit: AttestationLimit,
  cook: CookSeen | undefined,
): Verdict {
  const plain = judgeAttestation(answer && { ...answer, seen: said(answer) }, limit);
  if (!answer?.holds) return plain;
  const kept = answer.humidity;
  const shared = { limit: limit.statement, notes: [], source: limit.source, measured: plain.measured };
  const doubt = (because: string, next: string): Verdict => ({ ...shared, kind: 'undetermined', because, next });
  if (!kept) return doubt('The times and values are not recorded.', 'Answer again with how humidity was kept.');
  if (kept.how === 'moisture-proof bag') return plain;
  if (kept.how === 'large piece in a hot oven') return { ...shared, ...judgeLargePiece(kept) };
  if (kept.percent !== undefined && kept.percent < LEAST_PERCENT) {
    const because = `The relative humidity fell to ${kept.percent} %; ${LEAST_PERCENT} % are asked for.`;
    return { ...shared, kind: 'missed', because, next: HOLD };
  }
  const times = timesOf(kept, cook);
  if (!times || !cook) return doubt('The cook it belongs to is not finished.', 'Say that the cook is finished.');
  if (kept.minutes * MINUTE > times.longest) {
    return doubt(`It cannot have been humid for ${kept.minutes} min before the cook ended.`, 'Correct the times.');
  }
  const verdict = judgeHumidity(OPTIONS[kept.how], { cooking: times.cooking, humid: kept.minutes * MINUTE, endpoint: times.endpoint });
  const { kind, because, next, margin } = verdict;
  if (kind === 'met' && OPTIONS[kept.how] <= 2 && !isHeldWarm(cook)) {
    const only = `${kept.how} is printed for rows from 145 °F (62.8 °C) on, and the core held none of them.`;
    return { ...shared, kind: 'missed', because: only.charAt(0).toUpperCase() + only.slice(1), next: HOLD };
  }
  return { ...shared, kind, because, next, margin };
}

const HOLD = 'Hold the lot: lethality is not supported.';
const OPTIONS: Record<Exclude<HumidityKept['how'], 'moisture-proof bag' | 'large piece in a hot oven'>, HumidityOption> = {
  'live steam': 1,
  'sealed oven': 2,
  'humid for a quarter': 3,
  'humid throughout': 4,
};

const said = ({ seen, humidity }: Attestation & { humidity?: HumidityKept }): string =>
  [humidity && sayHumidityKept(humidity), seen.trim()].filter(Boolean).join('; ');

function judgeLargePiece({
  oven,
  piece,
}: Extract<HumidityKept, { how: 'large piece in a hot oven' }>): Pick<Verdict, 'kind' | 'because' | 'next'> {
  const degrees = { hundredths: Math.round(oven.value * 100), unit: oven.unit };
  const least = piece.unit === 'kg' || piece.unit === 'g' ? LARGE_PIECES[1] : LARGE_PIECES[0];
  if (massOf(piece) < (least as bigint)) {
    return { kind: 'missed', because: 'The piece is lighter than 10 lb (4.5 kg).', next: HOLD };
  }
  return above(degrees, HOT_OVEN) < 0
    ? { kind: 'missed', because: 'The oven was below 250 °F (121 °C).', next: HOLD }
    : { kind: 'met', because: 'A large piece in an oven that stayed at 250 °F (121 °C) or more needs no humidity.' };
}

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

/** The hottest that every probe was, so of the coldest piece, less what the thermometer may be wrong by. */
function endpointOf(readings: readonly CurveReading[], error: Degrees | undefined): Degrees {
  const hottest = [...byProbe(readings).values()].map((own) =>
    own.map(({ temperature }) => temperature).reduce((a, b) => (onCommonScale(b) > onCommonScale(a) ? b : a)),
  );
  const { hundredths, unit } = hottest.reduce((a, b) => (onCommonScale(b) < onCommonScale(a) ? b : a));
  const steps = Math.abs(error?.hundredths ?? 0) * (error?.unit === '°C' ? 9 : 5);
  return { hundredths: hundredths - Math.ceil(steps / (unit === '°C' ? 9 : 5)), unit };
}

/** Was a row held for which steam and a sealed oven are printed? */
const isHeldWarm = ({ readings, tables, error }: CookSeen): boolean =>
  tables.some((table) => {
    const rows = table.rows.filter(({ at }) => boundOf(at)['°F'] >= WARM_ROWS['°F']);
    return rows.length > 0 && judgeCurve(readings, { ...table, rows }, { ended: true, instrumentError: error }).kind === 'met';
  });
