import { isOfKind, type AskedFor } from '@larderbook/haccp';
import type { ControlPoint } from './plan';

const asksFor = ({ takenAs, limits }: ControlPoint, asked: AskedFor): boolean =>
  takenAs === 'attestation' && limits.some(({ limit }) => isOfKind(limit, 'attestation') && limit.asks === asked);

/** Another control point's clock may start at the recorded moment. */
export const recordsMoment = (point: ControlPoint): boolean => asksFor(point, 'moment');

export const asksForHumidity = (point: ControlPoint): boolean => asksFor(point, 'humidity');
