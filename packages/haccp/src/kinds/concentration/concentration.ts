import type { LimitFault } from '../../limits/limit-fault-code';
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
  fault,
  slips: none,
  temperatures: none,
  ruled: none,
  rows: none,
};

function fault(limit: ConcentrationLimit): LimitFault | undefined {
  const figures = [limit.min, limit.max, limit.maxThousandths].filter((figure) => figure !== undefined);
  if (figures.some((figure) => !Number.isSafeInteger(figure) || figure < 0)) return { code: 'bound-unusable' };
  if (!isCountable(limit)) return { code: 'ion-not-held', figures: { ion: limit.countedAs as string } };
  const most = mostThousandths(limit);
  if (limit.min === undefined && most === undefined) return { code: 'neither-least-nor-most' };
  if (limit.min !== undefined && most !== undefined && BigInt(limit.min) * 10n > most) return { code: 'least-above-most' };
  return undefined;
}
