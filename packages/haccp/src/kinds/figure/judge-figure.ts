import { divide } from '../../quantity/divide';
import type { Saying } from '../../limits/told';
import { cannotBe, impossibleFigure } from '../../limits/impossible-value';
import type { Ratio } from '../../formula/curing-species';
import { figureFault, sayAmount, sayFigureLimit, type FigureLimit } from './figure-limit';

/** Places shown: as many as a limit can have, and one more where fewer would look like a bound it is not on. */
const SHOWN = [3, 4, 5, 6] as const;

/**
 * An exact figure, in the unit of the limit, against its bounds; nothing is rounded to decide. A figure without a
 * weight to refer to, or below nothing where nothing can be below it, is undetermined.
 */
export function judgeFigure(figure: Ratio | undefined, limit: FigureLimit): Saying {
  const shared = { limit: sayFigureLimit(limit), notes: [], source: limit.source };
  const fault = figureFault(limit);
  if (fault) return { ...shared, kind: 'undetermined', measured: 'not judged', because: fault, next: 'Correct the limit in the plan.' };
  if (!figure || figure.denominator <= 0n || figure.numerator < 0n) {
    return {
      ...shared,
      kind: 'undetermined',
      measured: 'nothing usable',
      because: `There is no usable figure for ${limit.of}.`,
      next: 'Weigh or analyse what it is worked out from.',
    };
  }
  const measured = sayExact(figure, limit);
  const out = [outBy(figure, limit, 'min'), outBy(figure, limit, 'max')].find((side) => side?.isOut);
  const impossible = out ? undefined : impossibleFigure(limit, divide(figure.numerator * 1000n, figure.denominator, 'nearest'));
  if (impossible) return { ...shared, measured, ...cannotBe(impossible) };
  if (!out) return { ...shared, kind: 'met', measured, ...toSpare(figure, limit), because: `${measured} is within the limit.` };
  const amount = sayAmount(thousandths(-out.by, figure, 'up'), limit.unit);
  if (limit.advises) {
    const because = `${measured} is outside what is advised, ${sayFigureLimit(limit)}; no minimum or maximum is asked for.`;
    return { ...shared, kind: 'met', measured, because };
  }
  return {
    ...shared,
    kind: 'missed',
    measured,
    margin: out.by === 0n ? 'on a figure that is excluded' : `${amount} ${out.side === 'min' ? 'short' : 'too much'}`,
    because: `${limit.of}: ${measured} is outside ${sayFigureLimit(limit)}.`,
    next: 'Hold the lot and follow the corrective action of the plan.',
  };
}

type Side = 'min' | 'max';
type Outside = { side: Side; by: bigint; isOut: boolean };

/** How far inside (+) or outside (−) one bound: still a multiple of the figure's denominator, in thousandths. */
function outBy({ numerator, denominator }: Ratio, limit: FigureLimit, side: Side): Outside | undefined {
  const bound = limit[side];
  if (bound === undefined) return undefined;
  const above = numerator * 1000n - BigInt(bound) * denominator;
  const by = side === 'min' ? above : -above;
  return { side, by, isOut: by < 0n || (by === 0n && limit.signs?.[side] !== undefined) };
}

function toSpare(figure: Ratio, limit: FigureLimit) {
  const inside = [outBy(figure, limit, 'min'), outBy(figure, limit, 'max')].flatMap((side) => (side ? [side.by] : []));
  const least = inside.reduce((one, other) => (other < one ? other : one));
  return { margin: `${sayAmount(thousandths(least, figure, 'down'), limit.unit)} to spare` };
}

const thousandths = (by: bigint, { denominator }: Ratio, rounding: 'up' | 'down'): bigint => divide(by, denominator, rounding);

function sayExact({ numerator, denominator }: Ratio, { unit, min, max }: FigureLimit): string {
  const bounds = [min, max].flatMap((bound) => (bound === undefined ? [] : [BigInt(bound)]));
  for (const places of SHOWN) {
    const scale = 10n ** BigInt(places);
    const shown = divide(numerator * scale, denominator, 'nearest');
    const looksOn = bounds.some((bound) => shown * 1000n === bound * scale && numerator * 1000n !== bound * denominator);
    if (!looksOn) return sayAmount(shown, unit, places);
  }
  return `just off ${sayAmount(divide(numerator * 1000n, denominator, 'nearest'), unit)}`;
}
