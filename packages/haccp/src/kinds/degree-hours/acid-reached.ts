import type { Plain } from '../../limits/measurement';
import { impossibleIn } from '../../quantity/possible';
import { byProbe, isSetAside } from '../../thermal/curve';
import type { AsKept } from '../../thermal/instant';

/** pH of the meat, of one piece where several are followed. `at` is epoch milliseconds. */
export type AcidReading = AsKept & { at: number; pH: Plain; id?: string; probe?: string };

export type Acid = {
  /** The last piece's first reading at or below the pH that stays (epoch ms); undefined while a piece has none. */
  reachedAt?: number;
  /** Names of pieces without a reading at the pH, though another piece has one. */
  notShownOf: string[];
  leftOut: number;
  /** Set aside by a person. */
  setAside: number;
};

/**
 * Counted at the reading that shows it: the time before is unknown. A piece above and not measured again is not down.
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

/** A pH that cannot be shows nothing, and so counts as above: 0.53 may have been 5.3 or 5.53. */
function reachedIn(readings: readonly AcidReading[], { thousandths }: Plain): number | undefined {
  const lastAbove = readings.findLastIndex((reading) => reading.pH.thousandths > thousandths || !canBe(reading));
  return readings.find(({ at }, index) => index > lastAbove && at !== readings[lastAbove]?.at)?.at;
}
