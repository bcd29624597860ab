import { sayPrinted } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import { sayDuration } from '../../quantity/duration';
import type { CoolingSoFar } from './cooling-so-far';
import type { CurveReading } from '../../thermal/instant';
import { rescuesOf, type Rescue } from './rescue';
import type { CoolingContext, StageSpan } from './stage-span';
import { sayFromTo } from '../../quantity/say-from-to';

/** What would still bring each running stage to its bound in time, or that nothing would. */
export function sayRescue(cooling: CoolingSoFar, spans: readonly StageSpan[], last: CurveReading, context: CoolingContext): string[] {
  const { unit } = last.temperature;
  const now = Math.max(context.now ?? last.at, last.at);
  return rescuesOf(cooling, spans, context).map((rescue) => {
    const { from, to } = spans[rescue.stage] as StageSpan;
    const stage = sayFromTo(from, to, unit);
    if (rescue.can) return `${stage} can still be met: ${sayHow(rescue, sayPrinted(to, unit), now, unit)}.`;
    return rescue.why === 'time is over'
      ? `${stage} can no longer be met by chilling: its time is over. Only readings taken in time could show it.`
      : `${stage} cannot be met in this chiller: it is no colder than ${sayPrinted(to, unit)}. Use a colder one.`;
  });
}

type Still = Extract<Rescue, { can: true }>;

function sayHow({ by, hundredthsPerHour, halfway }: Still, to: string, now: number, unit: string): string {
  const rate = `${decimalText(Math.ceil(hundredthsPerHour / 10), 1)} ${unit} an hour on average`;
  const way = halfway ? `, at most ${sayDegrees(tenths(halfway.temperature))} after ${sayDuration(halfway.at - now)}` : '';
  return `${to} within ${sayDuration(by - now)}, ${rate}${way}`;
}

/** Never warmer than worked out. */
const tenths = ({ hundredths, unit }: { hundredths: number; unit: '°C' | '°F' }) => ({
  hundredths: Math.floor(hundredths / 10) * 10,
  unit,
});
