import { onCommonScale } from '../quantity/convert-degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CoreSpeed } from './core-speed';
import { doubtOf, isFarFrom, noDoubt, takeBeside, type Doubt } from './doubt';
import { note, type Finding } from './finding';
import { instantWith, joinInstant, type CurveReading, type Instant } from './instant';

const FLAT = 30 * 60_000;
/** In the other unit the number lies between its neighbours, give or take 2 °C. */
const FITS = onCommonScale({ hundredths: 200, unit: '°C' });

/** @param inOrder of time @param beside set aside by a person, in order too */
export function noteMovement(
  findings: Finding[],
  inOrder: readonly CurveReading[],
  beside: readonly CurveReading[],
  speed: CoreSpeed,
): void {
  const instants = joined(inOrder);
  const known = noDoubt(speed);
  let flat: CurveReading | undefined;
  let lastDoubted = -1;
  let nextBeside = 0;
  instants.forEach((own, index) => {
    const [before, next] = [instants[index - 1], instants[index + 1]];
    for (let one = beside[nextBeside]; one && one.at <= own.at; one = beside[nextBeside]) {
      takeBeside(known, instantWith(one));
      nextBeside += 1;
    }
    const lastOfCore = known.before?.colder;
    const doubt = doubtOf(known, own, next);
    if (doubt) {
      const kind = inOtherUnit(doubt, before, own, next);
      note(findings, kind, own.colder, own.colder, lastDoubted === index - 1, lastOfCore?.temperature);
      lastDoubted = index;
    }
    flat = before?.cold === own.cold ? (flat ?? before.colder) : undefined;
    const isLastOfFlat = flat !== undefined && next?.cold !== own.cold;
    if (flat && isLastOfFlat && own.at - flat.at > FLAT) note(findings, 'flat', own.colder, flat, false);
  });
}

function joined(inOrder: readonly CurveReading[]): Instant[] {
  const instants: Instant[] = [];
  for (const reading of inOrder) {
    const last = instants[instants.length - 1];
    if (last?.at === reading.at) joinInstant(last, reading);
    else instants.push(instantWith(reading));
  }
  return instants;
}

function inOtherUnit(doubt: Doubt, before: Instant | undefined, own: Instant, next: Instant | undefined) {
  const { hundredths, unit } = own.colder.temperature;
  const other: TemperatureUnit = unit === '°C' ? '°F' : '°C';
  const value = onCommonScale({ hundredths, unit: other });
  const around = [before, next].flatMap((instant) => instant?.cold ?? []);
  const fits = around.length > 0 && value >= Math.min(...around) - FITS && value <= Math.max(...around) + FITS;
  const isAlone = !next || isFarFrom(own, next);
  return fits && isAlone ? ('other unit' as const) : doubt;
}
