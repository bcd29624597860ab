import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import {
  decimalText,
  isOfKind,
  isUnconfirmed,
  kindOf,
  mostThousandths,
  type CriticalLimit,
  type Source,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { changedFields, type Difference, type Speakers } from './difference';
import { plausibleWords, surroundingsWords } from './plan-words';

export function pointDifferences(before: PlanContent, after: PlanContent, speakers: Speakers): Difference[] {
  const { say } = speakers;
  const earlier = new Map(before.controlPoints.map((point) => [point.controlPointId, point]));
  const kept = new Set(after.controlPoints.map(({ controlPointId }) => controlPointId));
  const gone = before.controlPoints.filter(({ controlPointId }) => !kept.has(controlPointId));
  const names = namesIn(before, after);
  return [
    ...gone.map(({ name }) => ({ where: name, what: say('point-removed') })),
    ...after.controlPoints.flatMap((point) => {
      const was = earlier.get(point.controlPointId);
      if (!was) return [{ where: point.name, what: say('point-new', { limits: figuresOf(point, '°F', speakers) }) }];
      const fields = [...fieldsOf(was, names, speakers), ...limitFields(was, point, speakers)];
      const now = [...fieldsOf(point, names, speakers), ...limitFields(point, was, speakers)];
      return changedFields(
        point.name,
        fields.map(([what, value], i) => [what, value, now[i]?.[1] ?? '']),
        speakers,
      );
    }),
  ];
}

type Field = [what: string, value: string];

const namesIn = (before: PlanContent, after: PlanContent): ReadonlyMap<string, string> =>
  new Map(
    [before, after].flatMap(({ steps, controlPoints }) => [
      ...steps.map(({ stepId, name }) => [stepId, name] as const),
      ...controlPoints.map(({ controlPointId, name }) => [controlPointId, name] as const),
    ]),
  );

const fieldsOf = (point: ControlPoint, names: ReadonlyMap<string, string>, { say, sayPlans, limits }: Speakers): Field[] => [
  [say('name'), point.name],
  [say('kind'), sayPlans(codeOf('kind', point.kind))],
  [say('step'), names.get(point.stepId) ?? ''],
  [say('hazard'), point.hazard],
  [say('recorded-as'), sayPlans(codeOf('taken', point.takenAs))],
  [say('clock-starts-with'), names.get(point.follows ?? '') ?? ''],
  [say('probes'), point.probes.join(', ')],
  [say('lies-in'), surroundingsWords(point, sayPlans)],
  [say('piece'), point.piece ? limits.sayPiece(point.piece) : ''],
  [say('errors'), limits.sayErrors(point.errors ?? {}).join(', ')],
  [say('asked-outside'), plausibleWords(point, sayPlans)],
  [say('what-is-measured'), point.monitoring.what],
  [say('how'), point.monitoring.how],
  [say('how-often'), point.monitoring.howOften],
  [say('fewest-readings'), point.frequency ? limits.sayFrequency(point.frequency) : ''],
  [say('by-whom'), point.monitoring.who],
  [say('corrective-action'), point.correctiveAction],
  [say('verification'), point.verification],
];

/** Figures in °F, or in °C where only those differ: a limit never changes unseen. */
function limitFields(point: ControlPoint, other: ControlPoint, speakers: Speakers): Field[] {
  const { say, limits: told } = speakers;
  const unit = figuresOf(point, '°F', speakers) === figuresOf(other, '°F', speakers) ? '°C' : '°F';
  const limits = point.limits.map(({ limit }) => limit);
  return [
    [say('limits'), figuresOf(point, unit, speakers)],
    [say('conditions'), limits.flatMap(({ conditions }) => told.sayConditions(conditions)).join(' ')],
    [say('longest-gap'), limits.flatMap((limit) => ('longestGapSeconds' in limit ? `${limit.longestGapSeconds / 60} min` : [])).join('; ')],
    [say('authority'), limits.flatMap((limit) => ('authority' in limit ? limit.authority : [])).join('; ')],
    [say('source'), limits.map(({ source }) => sourceWords(source, speakers)).join('; ')],
  ];
}

function sourceWords(source: Source, { say, limits }: Speakers): string {
  const { citation, edition } = source;
  return [say(isUnconfirmed(source) ? 'source-unconfirmed' : 'source-of', { citation, edition }), ...limits.saySupport(source)].join('. ');
}

const figuresOf = ({ limits }: ControlPoint, unit: TemperatureUnit, speakers: Speakers): string =>
  limits.map(({ limit }) => figureWords(limit, unit, speakers)).join('; ');

/** A single line leaves out the other rows, and the exact maximum behind a printed one. */
function figureWords(limit: CriticalLimit, unit: TemperatureUnit, { say, limits: { sayAnyRow, sayLimit } }: Speakers): string {
  const rows = kindOf(limit).rows(limit);
  if (rows.length > 0) return sayAnyRow(rows, unit);
  if (!isOfKind(limit, 'concentration')) return sayLimit(limit, unit);
  const most = mostThousandths(limit);
  return most === undefined
    ? sayLimit(limit)
    : say('exactly-ppm', { limit: sayLimit(limit), ppm: { value: decimalText(most, 3), unit: 'ppm' } });
}
