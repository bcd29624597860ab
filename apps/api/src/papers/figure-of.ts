import type { ControlPoint } from '@larderbook/contracts';
import type { FigureData } from '@larderbook/documents';
import { timeOf, type Drawing } from '@larderbook/haccp';
import type { Telling } from './telling';

/** The same picture as on the page. Corrected readings are not drawn. */
export function figureOf({ name }: Pick<ControlPoint, 'name'>, drawing: Drawing, { say, line }: Pick<Telling, 'say' | 'line'>): FigureData {
  const { unit, probes, surroundings, lines, stages, crossings, lethality, arrival } = drawing;
  return {
    title: say('temperature-of', { point: name }),
    unit,
    series: probes.map(({ probe, points }) => ({ label: probe || say('core'), points })),
    limits: lines.map(({ label, ...ruled }) => ({ ...ruled, label: line(label) })),
    stages: stages.map((stage) => stageOf(stage, say, line)),
    crossings: crossings.map(({ label, ...crossing }) => ({ ...crossing, label: line(label) })),
    surroundings,
    arrival: arrival?.earliest === undefined ? undefined : { ...arrival, label: line(arrival.label), earliest: arrival.earliest },
    panel:
      lethality.length === 0
        ? undefined
        : {
            title: say('lethality-so-far'),
            lines: lethality.map(({ found, points }) => ({
              label: line(found),
              points: points.map(({ at, log10 }) => ({ at, value: log10 })),
            })),
          },
  };
}

type Stage = Drawing['stages'][number];

const stageOf = (
  { label, startAt, endAt, deadline, kind }: Stage,
  say: Telling['say'],
  line: Telling['line'],
): FigureData['stages'][number] => ({
  label: line(label),
  from: startAt,
  to: endAt,
  deadline,
  missed: kind === 'missed',
  spent: endAt === undefined ? undefined : spentOf(endAt - startAt, deadline && deadline - startAt, say, line),
});

const spentOf = (spent: number, allowed: number | undefined, say: Telling['say'], line: Telling['line']): string =>
  allowed === undefined ? line(timeOf(spent)) : say('spent-of', { spent: line(timeOf(spent)), allowed: line(timeOf(allowed)) });
