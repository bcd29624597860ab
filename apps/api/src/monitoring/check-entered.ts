import { massUnits, type ControlPoint, type InputOf, type recordReading } from '@larderbook/contracts';
import {
  asGiven,
  degreesOf,
  degrees,
  hasAtMostDecimals,
  impossibleIn,
  isPlausible,
  isPossible,
  looksLikeOtherUnit,
  scaledBig,
  unitsRead,
  type Degrees,
  type PlausibleRange,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { askMeant, type Question } from '../lots/ask-about-weight';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';

type Entered = InputOf<typeof recordReading>['entered'];
type Value = Extract<Entered, { value: number }>;

/** Throws `wrong-kind-of-value`, or `invalid-input` for a temperature with more decimals than a thermometer shows. */
export function checkKind(point: ControlPoint, entered: Entered): void {
  const { name } = point;
  const units = unitsRead(point.limits.map(({ limit }) => limit));
  if (point.takenAs === 'weighings') throw wrongKind(told('judged-from-weighings', { point: name }));
  if ('answer' in entered) {
    if (point.takenAs === 'attestation') return;
    throw wrongKind(told('asks-for-number', { point: name, units: { anyOf: units } }));
  }
  if (point.takenAs === 'attestation') throw wrongKind(told('asks-for-yes-or-no', { point: name }));
  if (!units.includes(entered.unit))
    throw wrongKind(told('asks-for-other-unit', { point: name, units: { anyOf: units }, unit: entered.unit }));
  if (isTemperature(entered) && !hasAtMostDecimals(entered.value, 2)) {
    throw new Problem('invalid-input', told('two-decimals-of-temperature'), '#/entered/value');
  }
}

/** Asks about a value that nobody would expect here. */
export function askAbout(point: ControlPoint, entered: Entered): Question | undefined {
  if ('answer' in entered) return undefined;
  if (isTemperature(entered)) return askAboutDegrees(degrees(entered.value, entered.unit), rangeOf(point));
  const { value, unit } = entered;
  const least = (massUnits as readonly string[]).includes(unit) ? 0.001 : 0;
  const impossible = impossibleIn(unit, scaledBig(value, 3) ?? 0n);
  if (impossible) {
    const { value: read, lowest, highest } = impossible;
    return [told('cannot-be-outside', { value: read, lowest, highest }), told('is-it-really-so')];
  }
  if (value >= least) return undefined;
  return [told('cannot-be-check', { value: asGiven(value, unit) }), told('is-it-really-so')];
}

function askAboutDegrees(entered: Degrees, range: PlausibleRange | undefined): Question | undefined {
  if (range ? isPlausible(entered, range) : isPossible(entered)) return undefined;
  const other: Degrees = { ...entered, unit: entered.unit === '°C' ? '°F' : '°C' };
  const isOther = range !== undefined && looksLikeOtherUnit(entered, range);
  return [
    range
      ? told('another-range-expected', { entered: degreesOf(entered), ...ends(range, entered.unit) })
      : told('no-food-is-so', { entered: degreesOf(entered) }),
    askMeant(isOther ? degreesOf(other) : undefined),
  ];
}

const isTemperature = (entered: Value): entered is Value & { unit: TemperatureUnit } => entered.unit === '°C' || entered.unit === '°F';

const wrongKind = (why: Told) => new Problem('wrong-kind-of-value', why);

function rangeOf({ plausible }: ControlPoint): PlausibleRange | undefined {
  if (!plausible) return undefined;
  const [[coldF, hotF], [coldC, hotC]] = [plausible['°F'], plausible['°C']];
  return { min: { '°F': coldF, '°C': coldC }, max: { '°F': hotF, '°C': hotC } };
}

const ends = ({ min, max }: PlausibleRange, unit: TemperatureUnit) => ({
  least: degreesOf({ hundredths: min[unit] ?? NaN, unit }),
  most: degreesOf({ hundredths: max[unit] ?? NaN, unit }),
});
