import { GROWTH_CLAIM, growthClass } from '../../growth/growth';
import { highestOf, isGrowing, type GrowthFigure, type GrowthSoFar } from './growth-so-far';
import { decimalText } from '../../quantity/decimal';
import { sayDuration } from '../../quantity/duration';
import type { CurveContext } from '../../limits/curve-context';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { sayLimit } from '../../limits/say-limit';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Remark, Verdict } from '../../limits/verdict';

const SCREENING = 'A screening: it informs a person, and no lot is cleared by it alone.';
const HOLD = 'Hold the lot and follow the corrective action of the plan.';
const FILL_IN = 'Add the readings in between from the logger, or hold the lot.';
type Said = Pick<Verdict, 'kind' | 'because' | 'next' | 'running'>;

/**
 * Met when the most that can have grown between the readings stays within the bound: over each step the fastest rate
 * between its ends. Missed when straight lines already pass it; anything between, a gap, or growth nobody saw is doubt.
 */
export function judgeGrowthSoFar(growth: GrowthSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit, last } = growth;
  if (!last) return nothingUsableIn(curveNotes);
  const shared = { limit: sayLimit(limit), source: limit.source };
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };
  const highest = highestOf(growth);
  const measured = sayMeasured(highest, growth);
  const spare = Math.floor(limit.log10 - highest.atMost * 100);
  const said = decide(growth, highest, context);
  return { measured, spare, notes: [...curveNotes, SCREENING, GROWTH_CLAIM], ...shared, ...said };
}

function decide(growth: GrowthSoFar, { set, atMost, byStraightLines }: GrowthFigure, context: CurveContext): Said {
  const most = growth.limit.log10 / 100;
  const bound = `${decimalText(growth.limit.log10, 2)} log`;
  if (byStraightLines > most) {
    const because = `More than ${bound} of C. perfringens is predicted by ${set.name}.`;
    return { kind: 'missed', because, next: HOLD };
  }
  if (growth.readings < 2) return doubt('One reading shows no time in which anything grew or did not.', FILL_IN);
  if (growth.startUnseen) {
    return doubt('The first reading is already where spores grow; what came before was not seen.', FILL_IN);
  }
  if (growth.gap > 0) {
    const tolerated = sayDuration(growth.limit.longestGapSeconds * 1000);
    const because = `There is no reading for ${sayDuration(growth.gap)}; at most ${tolerated} may lie between two.`;
    return doubt(because, FILL_IN);
  }
  if (isGrowing(growth)) return context.ended ? endedWarm(growth) : goesOn(bound);
  if (atMost <= most) {
    return { kind: 'met', because: `At most ${bound} of C. perfringens is predicted by ${set.name}.` };
  }
  return doubt(`The readings are too far apart to be sure of at most ${bound}.`, FILL_IN);
}

function endedWarm({ sums }: GrowthSoFar): Said {
  const coldest = Math.min(...sums.map(({ set }) => set.minCelsius));
  return doubt(`The readings end above ${coldest} °C, where spores grow.`, HOLD);
}

const goesOn = (bound: string): Said => ({
  ...doubt('It is still where spores grow.', 'Chill on without a break and read the core often.'),
  running: { stage: 'growth', bound: `at most ${bound}` },
});

const doubt = (because: string, next: string): Said => ({ kind: 'undetermined', because, next });

/** In classes: the model is not good to decimals. "below 0.5 log (model estimate; …)" */
function sayMeasured({ set, atMost, byStraightLines }: GrowthFigure, growth: GrowthSoFar): string {
  const [straight, most] = [growthClass(byStraightLines), growthClass(atMost)];
  const across = straight === most ? '' : `, between the readings it may be ${most}`;
  const least = growth.startUnseen || isGrowing(growth) ? 'at least ' : '';
  const doubted = set.source.confirmed ? '' : ', figures not confirmed';
  return `${least}${straight}${across} (model estimate; ${set.name}, version ${set.version}${doubted})`;
}
