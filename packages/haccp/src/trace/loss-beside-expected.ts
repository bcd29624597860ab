import { divide } from '../quantity/divide';

/** Femtograms. `lost`: neither packed nor taken out for anything but the process itself. */
export type Loss = { wentIn: bigint; lost: bigint; yieldPercent: number };

/** `beyond` is above zero when too much is gone. */
export type LossBeside = { least: bigint; most: bigint; beyond: bigint };

/** The band is half the expected loss either way, at least a fiftieth of what went in. Common practice, no source. */
const HALF = 2n;
const FIFTIETH = 50n;

/** A loss below zero is a gain, as of water. */
export function lossBesideExpected({ wentIn, lost, yieldPercent }: Loss): LossBeside {
  const millionths = BigInt(Math.round((100 - yieldPercent) * 10_000));
  const expected = divide(wentIn * millionths, 1_000_000n, 'nearest');
  const either = larger(absolute(expected) / HALF, wentIn / FIFTIETH);
  const [least, most] = [expected - either, expected + either];
  return { least, most, beyond: lost > most ? lost - most : lost < least ? lost - least : 0n };
}

const absolute = (mass: bigint): bigint => (mass < 0n ? -mass : mass);
const larger = (one: bigint, other: bigint): bigint => (one > other ? one : other);
