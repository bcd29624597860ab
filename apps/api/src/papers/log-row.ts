import { isOfSurroundings, knownFlags, type ControlPoint } from '@larderbook/contracts';
import type { AmendmentData, JudgedCurveData, MonitoredReadingData } from '@larderbook/documents';
import { isTwoTimes, formatRead, type Told } from '@larderbook/haccp';
import { flagsNow, type ChecksOf } from '../lots/instrument-flags';
import { toldWorst } from './told-worst';
import { answerOnPaper } from './answer-on-paper';
import { amendmentsOf, voidedOf, type Corrected } from './corrected';
import { flagsOnPaper } from './flags-on-paper';
import type { Logged } from './logged-rows.queries';
import type { Telling } from './telling';

/** `checks` are the instruments' checks as they stand now. */
type Reader = { point: ControlPoint; checks: ReadonlyMap<string, ChecksOf>; telling: Telling };

/** A voided entry, or one corrected out of this log, is struck through without a verdict. */
export function rowOf(one: Corrected<Logged>, { point, checks, telling }: Reader): MonitoredReadingData {
  const { entry } = one;
  const { value, unit, what, probe, lotCode, judged, made, struckBy } = entry;
  const { name: by, at, recordedAt } = made;
  const moments = { at: Date.parse(at), enteredAt: Date.parse(recordedAt) };
  const limits = (judged.length > 0 ? judged : point.limits).map(({ limit }) => limit);
  return {
    kind: 'reading',
    lot: lotCode,
    value: answerIn(value, telling.say),
    unit,
    what,
    probe,
    note: answerOnPaper(entry, telling.say),
    by,
    limit: limits.map((limit) => telling.limits.sayLimit(limit, unit === '°C' ? '°C' : '°F')).join('; '),
    verdict: point.takenAs === 'curve' || struckBy ? undefined : toldWorst(judged, telling.tell),
    isOfCurve: (point.takenAs === 'curve' && !isOfSurroundings(point, { probe: probe ?? '' })) || undefined,
    struck: struckBy && (struckBy.voided ? 'voided' : 'corrected'),
    flags: flagsOf(entry, checks, telling.say),
    receivedAt: isTwoTimes(moments) ? moments.enteredAt : undefined,
    initials: initialsOf(by),
    at: moments.at,
    amendments: amendmentsHere(one, telling),
  };
}

/** Two times already show a late entry. */
function amendmentsHere(one: Corrected<Logged>, { instant, say }: Telling): AmendmentData[] {
  const sayValue = ({ value, unit, seen }: Logged): string =>
    [formatRead({ value: answerIn(value, say), unit }), unit ? '' : seen].filter(Boolean).join(' ');
  const fields = {
    [say('field-value')]: sayValue,
    [say('field-item')]: ({ what = '' }: Logged) => what,
    [say('field-probe')]: ({ probe = '' }: Logged) => probe,
    [say('field-time')]: ({ made }: Logged) => instant(Date.parse(made.at)),
  };
  const { struckBy } = one.entry;
  const before = amendmentsOf(one, fields);
  if (!struckBy) return before;
  if (struckBy.voided) return [...before, voidedOf('', sayValue(one.entry), struckBy)];
  return [...before, ...amendmentsOf({ entry: struckBy, earlier: [one.entry] }, fields)];
}

function flagsOf({ flags, instrumentId, made }: Logged, checks: Reader['checks'], say: Telling['say']): string[] {
  const entered = { instrumentId: instrumentId ?? null, flags, takenAt: new Date(made.at), recordedAt: new Date(made.recordedAt) };
  return flagsOnPaper(knownFlags(flagsNow(entered, checks)), say);
}

export const curveOf = ({ at, lot, product, limit }: MonitoredReadingData, verdict: Told, number: string | undefined): JudgedCurveData => ({
  kind: 'curve',
  at,
  lot,
  product,
  limit,
  verdict,
  deviation: verdict.kind === 'missed' ? number : undefined,
});

const answerIn = (value: string, say: Telling['say']): string => (value === 'yes' || value === 'no' ? say(value) : value);

const initialsOf = (name: string): string =>
  name
    .split(/\s+/)
    .map((part) => part[0] ?? '')
    .join('')
    .toUpperCase();
