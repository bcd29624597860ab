/** The salt as weighed, or the ion. */
export type CuringSpecies = 'NaNO₂' | 'KNO₂' | 'NO₂' | 'NaNO₃' | 'KNO₃' | 'NO₃';

/** Exact; the denominator is above zero unless the figures were unusable. */
export type Ratio = { numerator: bigint; denominator: bigint };

/**
 * Hundred-millionths of a gram per mole: Na 22.98976928, K 39.0983, N 14.0067, O 15.9994 (IUPAC, standard atomic
 * weights 2005, abridged). Regulation (EU) 2023/2108 rounds the factors from them to 0.67 and 0.73; a rounded factor
 * decides nothing here.
 */
const [Na, K, N, O] = [2_298_976_928n, 3_909_830_000n, 1_400_670_000n, 1_599_940_000n];
const molarMass: Record<CuringSpecies, bigint> = {
  'NaNO₂': Na + N + 2n * O,
  'KNO₂': K + N + 2n * O,
  'NO₂': N + 2n * O,
  'NaNO₃': Na + N + 3n * O,
  'KNO₃': K + N + 3n * O,
  'NO₃': N + 3n * O,
};

export const isNitrate = (species: CuringSpecies): boolean => species.endsWith('NO₃');

/**
 * Per ion: 0.6668 g NO₂ in a gram of NaNO₂. Undefined between nitrite and nitrate, which no rule adds up by their ions.
 */
export function asSpecies(from: CuringSpecies, to: CuringSpecies): Ratio | undefined {
  if (isNitrate(from) !== isNitrate(to)) return undefined;
  return { numerator: molarMass[to], denominator: molarMass[from] };
}
