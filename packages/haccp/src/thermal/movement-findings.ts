import { onCommonScale } from '../quantity/convert-degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import { doubtOf, noDoubt, type Doubt } from './doubt';
import { note, type Finding } from './finding';
import { instantWith, type CurveReading, type Instant } from './instant';

const FLAT = 30 * 60_000;
/** In the other unit the number would lie between its neighbours, give or take 2 °C. */
const FITS = onCommonScale({ hundredths: 200, unit: '°C' });

/** What the core cannot have done, and what it may not have done, in order of time. */
export function noteMovement(findings: Finding[], inOrder: readonly CurveReading[]): void {
  const instants = inOrder.map(instantWith);
  const known = noDoubt();
  let flat: CurveReading | undefined;
  let lastDoubted = -1;
  instants.forEach((own, index) => {
    const [before, next] = [instants[index - 1], instants[index + 1]];
    const doubt = doubtOf(known, own, next);
    if (doubt) {
      note(findings, inOtherUnit(doubt, before, own, next), own.colder, own.colder, lastDoubted === index - 1);
      lastDoubted = index;
    }
    flat = before?.cold === own.cold ? flat ?? before.colder : undefined;
    const isLastOfFlat = flat !== undefined && next?.cold !== own.cold;
    if (flat && isLastOfFlat && own.at - flat.at > FLAT) note(findings, 'flat', own.colder, flat, false);
  });
}

function inOtherUnit(doubt: Doubt, before: Instant | undefined, own: Instant, next: Instant | undefined) {
  const { hundredths, unit } = own.colder.temperature;
  const other: TemperatureUnit = unit === '°C' ? '°F' : '°C';
  const value = onCommonScale({ hundredths, unit: other });
  const around = [before, next].flatMap((instant) => instant?.cold ?? []);
  const fits =
    around.length > 0 && value >= Math.min(...around) - FITS && value <= Math.max(...around) + FITS;
  return fits ? ('other unit' as const) : doubt;
}
