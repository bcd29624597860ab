import type { ControlPoint } from '@larderbook/contracts';
import type { FigureData } from '@larderbook/documents';
import { sayDuration, type Drawing } from '@larderbook/haccp';
import type { Telling } from './telling';

/** The picture of a control point on paper: the same as its page shows. Corrected readings are not drawn. */
export function figureOf({ name }: Pick<ControlPoint, 'name'>, drawing: Drawing, say: Telling['say']): FigureData {
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = drawing;
  return {
    title: say('temperature-of', { point: name }),
    unit,
    series: probes.map(({ probe, points }) => ({ label: probe || say('core'), points })),
    limits: lines,
    stages: stages.map((stage) => stageOf(stage, say)),
    crossings,
    surroundings,
    arrival: arrival?.earliest === undefined ? undefined : { ...arrival, earliest: arrival.earliest },
    panel:
      lethality.length === 0
        ? undefined
        : {
            title: say('lethality-so-far'),
            lines: lethality.map(({ said, points }) => ({
              label: said,
              points: points.map(({ at, log10 }) => ({ at, value: log10 })),
            })),
          },
  };
}

type Stage = Drawing['stages'][number];

const stageOf = ({ label, startAt, endAt, deadline, kind }: Stage, say: Telling['say']): FigureData['stages'][number] => ({
  label,
  from: startAt,
  to: endAt,
  deadline,
  missed: kind === 'missed',
  spent: endAt === undefined ? undefined : spentOf(endAt - startAt, deadline && deadline - startAt, say),
});

const spentOf = (spent: number, allowed: number | undefined, say: Telling['say']): string =>
  allowed === undefined ? sayDuration(spent) : say('spent-of', { spent: sayDuration(spent), allowed: sayDuration(allowed) });
