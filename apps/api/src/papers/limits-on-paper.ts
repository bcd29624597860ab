import type { ControlPointOnLot, Deviation, Judged } from '@larderbook/contracts';
import type { JudgedData, JudgedLimitData } from '@larderbook/documents';
import { canonicalJson, type CriticalLimit, type TemperatureUnit } from '@larderbook/haccp';
import { numberOf } from './deviation-on-paper';
import type { Telling } from './telling';

export function limitsOnPaper(
  { controlPoint, judged }: ControlPointOnLot,
  own: readonly Deviation[],
  unit: TemperatureUnit,
  { say, limits, tell }: Telling,
): JudgedLimitData[] {
  return controlPoint.limits.map(({ limitId, limit }) => {
    const found = judged.find((one) => one.limitId === limitId);
    return {
      what: limits.formatAbout(limit),
      printed: limits.sayLimit(limit, unit),
      source: limit.source,
      verdict: found && tell(found.verdict, found.limit),
      deviation: deviationOf(limit, controlPoint.controlPointId, own, say),
    };
  });
}

export const judgedOnPaper = (
  judged: readonly Judged[],
  controlPointId: string | undefined,
  own: readonly Deviation[],
  { say, limits, tell }: Telling,
): JudgedData[] =>
  judged.map(({ limit, verdict }) => ({
    what: limits.formatAbout(limit) ?? say('field-value'),
    verdict: tell(verdict, limit),
    deviation: deviationOf(limit, controlPointId, own, say),
  }));

/** The limit and the deviation carry the same limit word for word. */
function deviationOf(
  limit: CriticalLimit,
  controlPointId: string | undefined,
  own: readonly Deviation[],
  say: Telling['say'],
): string | undefined {
  const same = canonicalJson(limit);
  const found = own.filter((one) => one.controlPoint?.controlPointId === controlPointId && one.limit && canonicalJson(one.limit) === same);
  const [latest] = [...found].sort((a, b) => b.number - a.number);
  return latest && numberOf(latest, say);
}
