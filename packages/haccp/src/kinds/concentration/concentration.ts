import { decimalText } from '../../quantity/decimal';
import type { Kind } from '../kind';
import { none } from '../none';
import type { ConcentrationLimit } from './concentration-limit';
import { isCountable } from './counted-as';
import { mostThousandths } from './dose-for';

export const concentration: Kind<ConcentrationLimit> = {
  takenAs: 'weighings',
  isOfCore: false,
  isChill: false,
  unitsRead: none,
  say,
  fault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};

function say({ printed, min, max, countedAs }: ConcentrationLimit): string {
  const least = min === undefined ? [] : [`≥ ${decimalText(min, 2)} ppm${countedAs ? ` as ${countedAs}` : ''}`];
  const most = max === undefined ? [] : [`≤ ${printed}`];
  return [...least, ...most].join(' and ') || 'no bound set';
}

function fault(limit: ConcentrationLimit): string | undefined {
  const figures = [limit.min, limit.max, limit.maxThousandths].filter((figure) => figure !== undefined);
  if (figures.some((figure) => !Number.isSafeInteger(figure) || figure < 0))
    return 'A figure of the concentration is no whole number above zero.';
  if (!isCountable(limit)) return `${limit.substance} holds no ${limit.countedAs} to count.`;
  const most = mostThousandths(limit);
  if (limit.min === undefined && most === undefined) return 'The concentration has neither a least nor a most.';
  if (limit.min !== undefined && most !== undefined && BigInt(limit.min) * 10n > most) return 'The least is more than the most.';
  return undefined;
}
