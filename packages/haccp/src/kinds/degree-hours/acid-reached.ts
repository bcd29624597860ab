import type { Plain } from '../../limits/measurement';
import { impossibleIn } from '../../quantity/possible';
import { byProbe, isSetAside } from '../../thermal/curve';
import type { AsKept } from '../../thermal/instant';

/** One measurement of the meat's pH, of one piece where several are followed. `at` is epoch milliseconds. */
export type AcidReading = AsKept & { at: number; pH: Plain; id?: string; probe?: string };

export type Acid = {
  /**
   * Of the piece that was last, the first reading at or below the pH after which none is above it (epoch ms); undefined
   * while there is one without.
   */
  reachedAt?: number;
  /** The pieces, by name, of which no reading shows the pH though another's does. */
  notShownOf: string[];
  leftOut: number;
  /** Left out because a person said so. */
  setAside: number;
};

/**
 * When the pH was surely down in every piece: at the reading that shows it, since nothing is known of the time before
 * it. A piece that was above it and was not measured again is not down.
 */
export function acidReached(readings: readonly AcidReading[], pH: Plain): Acid {
  const pieces = [...byProbe(readings)].map(([piece, own]) => ({ piece, reachedAt: reachedIn(usableOf(own), pH) }));
  const setAside = readings.filter(isSetAside).length;
  const notShown = pieces.filter(({ reachedAt }) => reachedAt === undefined);
  const reached = notShown.length > 0 ? [] : pieces.map(({ reachedAt }) => reachedAt as number);
  return {
    reachedAt: reached.length > 0 ? Math.max(...reached) : undefined,
    notShownOf: notShown.length < pieces.length ? notShown.map(({ piece }) => piece) : [],
    leftOut: readings.filter((reading) => !isSetAside(reading) && (!isRead(reading) || !canBe(reading))).length,
    setAside,
  };
}

const usableOf = (readings: readonly AcidReading[]): readonly AcidReading[] =>
  readings.filter((reading) => !isSetAside(reading) && isRead(reading)).sort((a, b) => a.at - b.at);

const isRead = (reading: AcidReading): boolean => Number.isFinite(reading?.at) && Number.isSafeInteger(reading.pH?.thousandths);

const canBe = ({ pH }: AcidReading): boolean => impossibleIn('pH', pH.thousandths) === undefined;

/** A number that no meat has shows nothing down: 0.53 may be 5.3 or 5.53, and 99 anything. */
function reachedIn(readings: readonly AcidReading[], { thousandths }: Plain): number | undefined {
  const lastAbove = readings.findLastIndex((reading) => reading.pH.thousandths > thousandths || !canBe(reading));
  return readings.find(({ at }, index) => index > lastAbove && at !== readings[lastAbove]?.at)?.at;
}
