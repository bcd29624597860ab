import { isOfKind, type AskedFor } from '@larderbook/haccp';
import type { ControlPoint } from './plan';

/** Does a control point ask for more than yes or no? */
const asksFor = ({ takenAs, limits }: ControlPoint, asked: AskedFor): boolean =>
  takenAs === 'attestation' && limits.some(({ limit }) => isOfKind(limit, 'attestation') && limit.asks === asked);

/** Is the moment of the answer what is recorded, so that another control point's clock may start there? */
export const recordsMoment = (point: ControlPoint): boolean => asksFor(point, 'moment');

export const asksForHumidity = (point: ControlPoint): boolean => asksFor(point, 'humidity');
