import type { ControlPoint } from '@larderbook/contracts';

/** The control points at which this substance is judged as it is weighed. */
export const pointsJudging = (points: readonly ControlPoint[], substance: string | undefined): ControlPoint[] =>
  points.filter(
    ({ takenAs, limits }) =>
      takenAs === 'weighings' && limits.some(({ limit }) => limit.kind === 'concentration' && limit.substance === substance),
  );
