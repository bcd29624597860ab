import type { ControlPoint } from '@larderbook/contracts';
import type { FigureData } from '@larderbook/documents';
import { sayDuration, type Drawing } from '@larderbook/haccp';

/** The picture of a control point on paper: the same as its page shows. Corrected readings are not drawn. */
export function figureOf({ name }: Pick<ControlPoint, 'name'>, drawing: Drawing): FigureData {
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = drawing;
  return {
    title: `${name}: temperature`,
    unit,
    series: probes.map(({ probe, points }) => ({ label: probe || 'core', points })),
    limits: lines,
    stages: stages.map(stageOf),
    crossings,
    surroundings,
    arrival: arrival?.earliest === undefined ? undefined : { ...arrival, earliest: arrival.earliest },
    panel:
      lethality.length === 0
        ? undefined
        : {
            title: 'Lethality so far, log10, drawn up to 12. Model estimate: support for a process authority',
            lines: lethality.map(({ said, points }) => ({
              label: said,
              points: points.map(({ at, log10 }) => ({ at, value: log10 })),
            })),
          },
  };
}

type Stage = Drawing['stages'][number];

const stageOf = ({ label, startAt, endAt, deadline, kind }: Stage): FigureData['stages'][number] => ({
  label,
  from: startAt,
  to: endAt,
  deadline,
  missed: kind === 'missed',
  spent:
    endAt === undefined
      ? undefined
      : sayDuration(endAt - startAt) + (deadline === undefined ? '' : ` of ${sayDuration(deadline - startAt)}`),
});
