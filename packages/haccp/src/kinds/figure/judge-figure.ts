import { divide } from '../../quantity/divide';
import { amountOf, differenceOf } from '../../quantity/quantities';
import { cannotBe, impossibleFigure } from '../../limits/impossible-value';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Figure, Found, Verdict } from '../../limits/verdict';
import type { Ratio } from '../../formula/curing-species';
import { figureFault, type FigureLimit } from './figure-limit';

/** Decimals: as many as a limit can have, and more where fewer look like a bound it is not on. */
const SHOWN = [3, 4, 5, 6] as const;

/** Nothing is rounded to decide. Undetermined without a weight to refer to, or below zero. */
export function judgeFigure(figure: Ratio | undefined, limit: FigureLimit): Verdict {
  const fault = figureFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [] };
  if (!figure || figure.denominator <= 0n || figure.numerator < 0n) {
    return { kind: 'undetermined', finding: 'figure-missing', figures: { of: limit.of }, notes: [] };
  }
  const read = exactFigure(figure, limit);
  const out = [outBy(figure, limit, 'min'), outBy(figure, limit, 'max')].find((side) => side?.isOut);
  const impossible = out ? undefined : impossibleFigure(limit, divide(figure.numerator * 1000n, figure.denominator, 'nearest'));
  if (impossible) return { ...cannotBe(impossible), notes: [] };
  if (!out) {
    const spare = leastSpare(figure, limit);
    return {
      kind: 'met',
      finding: 'value-within',
      figures: { read, spare: differenceOf(spare, limit.unit) },
      spare: Number(spare),
      notes: [],
    };
  }
  if (limit.advises) return { kind: 'met', finding: 'figure-not-as-advised', figures: { read }, notes: [] };
  return { kind: 'missed', ...missedBy(out, figure, limit, read), notes: [] };
}

/** An excluded figure has no distance to its bound. */
function missedBy({ side, by }: Outside, figure: Ratio, { of, unit, ...limit }: FigureLimit, read: Figure): Found {
  const bound = amountOf(limit[side] as number, unit);
  if (by === 0n) return { finding: 'figure-excluded', figures: { of, read, bound } };
  const figures = { of, read, by: differenceOf(thousandths(-by, figure, 'up'), unit), bound };
  return { finding: side === 'min' ? 'figure-below' : 'figure-above', figures };
}

type Side = 'min' | 'max';
type Outside = { side: Side; by: bigint; isOut: boolean };

/** Inside (+) or outside (−), in thousandths; still a multiple of the figure's denominator. */
function outBy({ numerator, denominator }: Ratio, limit: FigureLimit, side: Side): Outside | undefined {
  const bound = limit[side];
  if (bound === undefined) return undefined;
  const above = numerator * 1000n - BigInt(bound) * denominator;
  const by = side === 'min' ? above : -above;
  return { side, by, isOut: by < 0n || (by === 0n && limit.signs?.[side] !== undefined) };
}

/** Thousandths. */
function leastSpare(figure: Ratio, limit: FigureLimit): bigint {
  const inside = [outBy(figure, limit, 'min'), outBy(figure, limit, 'max')].flatMap((side) => (side ? [side.by] : []));
  const least = inside.reduce((one, other) => (other < one ? other : one));
  return thousandths(least, figure, 'down');
}

const thousandths = (by: bigint, { denominator }: Ratio, rounding: 'up' | 'down'): bigint => divide(by, denominator, rounding);

function exactFigure({ numerator, denominator }: Ratio, { unit, min, max }: FigureLimit): Figure {
  const bounds = [min, max].flatMap((bound) => (bound === undefined ? [] : [BigInt(bound)]));
  for (const places of SHOWN) {
    const scale = 10n ** BigInt(places);
    const shown = divide(numerator * scale, denominator, 'nearest');
    const looksOn = bounds.some((bound) => shown * 1000n === bound * scale && numerator * 1000n !== bound * denominator);
    if (!looksOn) return amountOf(shown, unit, places);
  }
  return { code: 'just-off', figures: { bound: amountOf(divide(numerator * 1000n, denominator, 'nearest'), unit) } };
}
