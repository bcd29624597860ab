import type { ControlPointOnLot, Deviation, Judged } from '@larderbook/contracts';
import type { JudgedData, JudgedLimitData } from '@larderbook/documents';
import { canonicalJson, sayLimit, type CriticalLimit, type TemperatureUnit } from '@larderbook/haccp';
import { sayNumber } from './deviation-on-paper';

/** Every limit of a control point as its source prints it, with its verdict and the deviation that answers it. */
export function limitsOnPaper(
  { controlPoint, judged }: ControlPointOnLot,
  own: readonly Deviation[],
  unit: TemperatureUnit,
): JudgedLimitData[] {
  return controlPoint.limits.map(({ limitId, limit }) => ({
    what: whatOf(limit),
    printed: sayLimit(limit, unit),
    source: limit.source,
    verdict: judged.find((one) => one.limitId === limitId)?.verdict,
    deviation: deviationOf(limit, controlPoint.controlPointId, own),
  }));
}

export const judgedOnPaper = (judged: readonly Judged[], controlPointId: string | undefined, own: readonly Deviation[]): JudgedData[] =>
  judged.map(({ limit, verdict }) => ({
    what: whatOf(limit) ?? 'value',
    verdict,
    deviation: deviationOf(limit, controlPointId, own),
  }));

/** The latest deviation of this limit at this control point. Both carry the limit word for word. */
function deviationOf(limit: CriticalLimit, controlPointId: string | undefined, own: readonly Deviation[]): string | undefined {
  const same = canonicalJson(limit);
  const found = own.filter((one) => one.controlPoint?.controlPointId === controlPointId && one.limit && canonicalJson(one.limit) === same);
  const [latest] = [...found].sort((a, b) => b.number - a.number);
  return latest && sayNumber(latest);
}

function whatOf(limit: CriticalLimit): string | undefined {
  switch (limit.kind) {
    case 'concentration':
      return limit.substance;
    case 'dwell':
      return 'held';
    case 'cooling':
      return 'cooling';
    case 'bandTime':
      return 'time between';
    case 'attestation':
      return 'answer';
    case 'lethality':
      return 'lethality';
    case 'growth':
      return 'growth';
    case 'degreeHours':
      return 'degree-hours';
    case 'weightLoss':
      return 'loss of weight';
    case 'freezing':
      return 'frozen';
    case 'figure':
      return limit.of;
    case 'range':
      return limit.measured === 'percent' ? undefined : limit.measured;
  }
}
