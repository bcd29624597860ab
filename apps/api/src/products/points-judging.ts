import type { ControlPoint } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';

export const pointsJudging = (points: readonly ControlPoint[], substance: string | undefined): ControlPoint[] =>
  points.filter(
    ({ takenAs, limits }) =>
      takenAs === 'weighings' && limits.some(({ limit }) => isOfKind(limit, 'concentration') && limit.substance === substance),
  );
