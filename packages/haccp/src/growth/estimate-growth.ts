import { coded } from '../limits/coded';
import type { Coded } from '../limits/verdict';
import { DEGREE } from '../lethality/celsius';
import { onCommonScale } from '../quantity/convert-degrees';
import { byProbe, prepareCurve, type Curve, type CurveReading } from '../thermal/curve';
import { addToGrowth, beginGrowth, growthOf, type GrowthOptions } from './add-up-growth';
import type { Growth } from './growth';
import { growthSetsFor, type GrowthSet, type Species } from './growth-set';

/** A screening for a person. Only a limit on growth, set beside a cooling limit, is judged. */
export type GrowthOutcome =
  | { kind: 'estimate'; highest: ProbeGrowth; all: readonly ProbeGrowth[]; notes: readonly Coded[] }
  | { kind: 'undetermined'; because: Coded; next: Coded; notes: readonly Coded[] };

export type ProbeGrowth = Growth & { readonly probe: string };

/**
 * Cooked, uncured product by every set and probe; the highest is shown. 1e-11 log for the readings given; the claim
 * tells the rest. Good for 10 to 51 °C, where the rates were measured. The come-up rule covers slow heating.
 */
export function estimateGrowth(
  readings: readonly CurveReading[],
  species: Species | 'mixed or unknown',
  options: GrowthOptions = {},
): GrowthOutcome {
  const curves = [...byProbe(readings)].map(([probe, own]) => ({ probe, curve: prepareCurve(own) }));
  const notes = curves.flatMap(({ curve }) => curve.notes);
  const all = curves.flatMap(({ probe, curve }) =>
    growthSetsFor(species).map((set): ProbeGrowth => ({ ...growthAlong(curve, set, options), probe })),
  );
  const thin = all.find(({ restsOn }) => restsOn.readings < 2);
  const highest = all.reduce((most, one) => (isHigher(one, most) ? one : most), all[0] as ProbeGrowth);
  return thin ? { ...tooFew(thin), notes } : { kind: 'estimate', highest, all, notes };
}

function growthAlong({ colder, warmer }: Curve, set: GrowthSet, options: GrowthOptions): Growth {
  const sum = beginGrowth(set, options);
  colder.forEach((cold, index) => {
    const warm = warmer[index] as CurveReading;
    addToGrowth(sum, { at: cold.at, colder: celsius(cold), warmer: celsius(warm) });
  });
  return growthOf(sum);
}

function tooFew({ restsOn, probe }: ProbeGrowth): Omit<Extract<GrowthOutcome, { kind: 'undetermined' }>, 'notes'> {
  const because = coded(restsOn.readings === 0 ? 'nothing-read-of-cooling' : 'one-reading-of-cooling', probe ? { probe } : undefined);
  return { kind: 'undetermined', because, next: coded('add-readings-of-cooling') };
}

/** By the bound across gaps first, which without gaps is the estimate itself. */
const isHigher = ({ atMost, byStraightLines }: Growth, other: Growth): boolean =>
  atMost.withLag > other.atMost.withLag ||
  (atMost.withLag === other.atMost.withLag && byStraightLines.withLag > other.byStraightLines.withLag);

const celsius = ({ temperature }: CurveReading): number => onCommonScale(temperature) / DEGREE;
