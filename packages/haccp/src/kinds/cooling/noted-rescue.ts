import { printedAllowing } from '../../quantity/printed-allowing';
import { degreesOf, timeOf } from '../../quantity/quantities';
import { decimalText } from '../../quantity/decimal';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CoolingSoFar } from './cooling-so-far';
import type { CurveReading } from '../../thermal/instant';
import { rescuesOf, type Rescue } from './rescue';
import type { CoolingContext, StageSpan } from './stage-span';
import { stageOf } from './stage-of';
import type { Coded, Figures } from '../../limits/verdict';

export function notedRescue(cooling: CoolingSoFar, spans: readonly StageSpan[], last: CurveReading, context: CoolingContext): Coded[] {
  const { unit } = last.temperature;
  const now = Math.max(context.now ?? last.at, last.at);
  return rescuesOf(cooling, spans, context).map((rescue) => {
    const { from, to } = spans[rescue.stage] as StageSpan;
    const about = { stage: stageOf(from, to, unit), to: printedAllowing(to, unit, -cooling.error) };
    if (rescue.can) return howStill(rescue, about, now, unit);
    return { code: rescue.why === 'time is over' ? 'rescue-too-late' : 'rescue-chiller-too-warm', figures: about };
  });
}

export const isRescue = ({ code }: Coded): boolean => code.startsWith('rescue');

type Still = Extract<Rescue, { can: true }>;

/** Tenths of a degree an hour, rounded up; the half-way core rounded down. */
function howStill({ by, hundredthsPerHour, halfway }: Still, about: Figures, now: number, unit: TemperatureUnit): Coded {
  const rate = { value: decimalText(Math.ceil(hundredthsPerHour / 10), 1), unit };
  const figures = { ...about, left: timeOf(by - now), rate };
  if (!halfway) return { code: 'rescue', figures };
  const hundredths = Math.floor(halfway.temperature.hundredths / 10) * 10;
  return {
    code: 'rescue-by-half-way',
    figures: { ...figures, most: degreesOf({ hundredths, unit: halfway.temperature.unit }), half: timeOf(halfway.at - now) },
  };
}
