import type { ControlPoint } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';

/** The control points at which this substance is judged as it is weighed. */
export const pointsJudging = (points: readonly ControlPoint[], substance: string | undefined): ControlPoint[] =>
  points.filter(
    ({ takenAs, limits }) =>
      takenAs === 'weighings' && limits.some(({ limit }) => isOfKind(limit, 'concentration') && limit.substance === substance),
  );
