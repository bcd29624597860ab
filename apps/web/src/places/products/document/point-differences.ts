import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import {
  decimalText,
  isUnconfirmed,
  mostThousandths,
  sayConditions,
  sayErrors,
  sayLimit,
  sayFrequency,
  sayPiece,
  saySupport,
  type CriticalLimit,
  type Source,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { changedFields, type Difference } from './difference';
import { pointKindWords, saySurroundings, takenAsWords } from './plan-words';

/** Control points that went, that are new, and every field in which the others differ. */
export function pointDifferences(before: PlanContent, after: PlanContent): Difference[] {
  const earlier = new Map(before.controlPoints.map((point) => [point.controlPointId, point]));
  const kept = new Set(after.controlPoints.map(({ controlPointId }) => controlPointId));
  const gone = before.controlPoints.filter(({ controlPointId }) => !kept.has(controlPointId));
  const names = namesIn(before, after);
  return [
    ...gone.map(({ name }) => ({ where: name, what: 'This control point was removed.' })),
    ...after.controlPoints.flatMap((point) => {
      const was = earlier.get(point.controlPointId);
      if (!was) return [{ where: point.name, what: `This control point is new: ${figuresOf(point, '°F')}.` }];
      const fields = [...fieldsOf(was, names), ...limitFields(was, point)];
      const now = [...fieldsOf(point, names), ...limitFields(point, was)];
      return changedFields(
        point.name,
        fields.map(([what, value], i) => [what, value, now[i]?.[1] ?? '']),
      );
    }),
  ];
}

type Field = [what: string, value: string];

/** What a step or a control point is called now, or was called when there still was one. */
const namesIn = (before: PlanContent, after: PlanContent): ReadonlyMap<string, string> =>
  new Map(
    [before, after].flatMap(({ steps, controlPoints }) => [
      ...steps.map(({ stepId, name }) => [stepId, name] as const),
      ...controlPoints.map(({ controlPointId, name }) => [controlPointId, name] as const),
    ]),
  );

const fieldsOf = (point: ControlPoint, names: ReadonlyMap<string, string>): Field[] => [
  ['Name', point.name],
  ['Kind', pointKindWords[point.kind]],
  ['Step', names.get(point.stepId) ?? ''],
  ['Hazard', point.hazard],
  ['Recorded as', takenAsWords[point.takenAs]],
  ['Clock starts with', names.get(point.follows ?? '') ?? ''],
  ['Probes', point.probes.join(', ')],
  ['Lies in', saySurroundings(point)],
  ['Piece', point.piece ? sayPiece(point.piece) : ''],
  ['Error of the instruments allowed for', sayErrors(point.errors ?? {}).join(', ')],
  ['Asked about outside', sayPlausible(point)],
  ['What is measured', point.monitoring.what],
  ['How', point.monitoring.how],
  ['How often', point.monitoring.howOften],
  ['Fewest readings', point.frequency ? sayFrequency(point.frequency) : ''],
  ['By whom', point.monitoring.who],
  ['Corrective action', point.correctiveAction],
  ['Verification', point.verification],
];

/** Figures in °F, or in °C where only those differ; a limit never changes unseen. */
function limitFields(point: ControlPoint, other: ControlPoint): Field[] {
  const unit = figuresOf(point, '°F') === figuresOf(other, '°F') ? '°C' : '°F';
  const limits = point.limits.map(({ limit }) => limit);
  return [
    ['Limits', figuresOf(point, unit)],
    ['What the limits ask for', limits.flatMap(({ conditions }) => sayConditions(conditions)).join(' ')],
    [
      'Longest time without a reading',
      limits.flatMap((limit) => ('longestGapSeconds' in limit ? `${limit.longestGapSeconds / 60} min` : [])).join('; '),
    ],
    ['Process authority', limits.flatMap((limit) => ('authority' in limit ? limit.authority : [])).join('; ')],
    ['Source of the limits', limits.map(({ source }) => saySource(source)).join('; ')],
  ];
}

const saySource = (source: Source): string =>
  [`${source.citation} (${source.edition}${isUnconfirmed(source) ? ', not confirmed' : ''})`, ...saySupport(source)].join('. ');

const figuresOf = ({ limits }: ControlPoint, unit: TemperatureUnit): string =>
  limits.map(({ limit }) => sayFigures(limit, unit)).join('; ');

/** Every row of a table and the exact maximum behind a printed one, which a single line leaves out. */
function sayFigures(limit: CriticalLimit, unit: TemperatureUnit): string {
  if (limit.kind === 'dwell') return limit.rows.map((row) => sayLimit({ ...limit, rows: [row] }, unit)).join(', or ');
  if (limit.kind !== 'concentration') return sayLimit(limit, unit);
  const most = mostThousandths(limit);
  return most === undefined ? sayLimit(limit) : `${sayLimit(limit)}, exactly ${decimalText(most, 3)} ppm`;
}

function sayPlausible({ plausible }: ControlPoint): string {
  if (!plausible) return '';
  const say = ([least, most]: [number, number]) => `${least / 100} to ${most / 100}`;
  return `${say(plausible['°F'])} °F, ${say(plausible['°C'])} °C`;
}
