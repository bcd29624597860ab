import type { ControlPoint, InputOf, recordReading } from '@larderbook/contracts';
import {
  decimalText,
  degrees,
  hasAtMostDecimals,
  isPlausible,
  isPossible,
  isUsable,
  looksLikeOtherUnit,
  plain,
  sayDegrees,
  type Degrees,
  type Measured,
  type PlausibleRange,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { Problem } from '../platform/problem';

type Entered = InputOf<typeof recordReading>['entered'];
type Value = Extract<Entered, { value: number }>;

const unitsOf: Record<Measured, readonly string[]> = {
  temperature: ['°C', '°F'],
  pH: ['pH'],
  aw: ['aw'],
  percent: ['%'],
};

/**
 * Whether what was entered is of the kind the control point asks for. Throws `wrong-kind-of-value`, and `invalid-input`
 * for a temperature with more decimals than a thermometer shows.
 */
export function checkKind(point: ControlPoint, entered: Entered): void {
  if (point.takenAs === 'weighings') throw wrongKind(`${point.name} is judged from what is weighed into the lot.`);
  if ('answer' in entered) {
    if (point.takenAs === 'attestation') return;
    throw wrongKind(`${point.name} asks for ${measuredAt(point)}, not for yes or no.`);
  }
  if (point.takenAs === 'attestation') throw wrongKind(`${point.name} asks for yes or no, and what was seen.`);
  const units = unitsOf[measuredAt(point)];
  const asked = `${measuredAt(point)} in ${units.join(' or ')}`;
  if (!units.includes(entered.unit)) throw wrongKind(`${point.name} asks for ${asked}, not for ${entered.unit}.`);
  if (isTemperature(entered) && !hasAtMostDecimals(entered.value, 2)) {
    const detail = 'A temperature has at most two decimals.';
    throw new Problem('invalid-input', { detail, errors: [{ pointer: '#/entered/value', detail }] });
  }
}

/** The question to ask about a value nobody would expect here; undefined when there is nothing to ask. */
export function askAbout(point: ControlPoint, entered: Entered): string | undefined {
  if ('answer' in entered) return undefined;
  if (isTemperature(entered)) return askAboutDegrees(degrees(entered.value, entered.unit), rangeOf(point));
  const measured = measuredAt(point);
  return isUsable(plain(entered.value), measured)
    ? undefined
    : `${measured} ${entered.value} cannot be. Check the instrument. Is it really so?`;
}

function askAboutDegrees(entered: Degrees, range: PlausibleRange | undefined): string | undefined {
  if (range ? isPlausible(entered, range) : isPossible(entered)) return undefined;
  const other: Degrees = { ...entered, unit: entered.unit === '°C' ? '°F' : '°C' };
  const expected = range ? `here ${sayRange(range, entered.unit)} would be expected` : 'no food is that hot or cold';
  const isOther = range !== undefined && looksLikeOtherUnit(entered, range);
  const question = isOther ? `Did you mean ${sayDegrees(other)}?` : 'Is it really so?';
  return `${sayDegrees(entered)} was entered; ${expected}. ${question}`;
}

const isTemperature = (entered: Value): entered is Value & { unit: TemperatureUnit } =>
  entered.unit === '°C' || entered.unit === '°F';

const wrongKind = (detail: string) => new Problem('wrong-kind-of-value', { detail });

/** A series is of temperatures; a single value is of whatever its range is about. */
function measuredAt({ limits }: ControlPoint): Measured {
  const range = limits.map(({ limit }) => limit).find((limit) => limit.kind === 'range');
  return range?.measured ?? 'temperature';
}

function rangeOf({ plausible }: ControlPoint): PlausibleRange | undefined {
  if (!plausible) return undefined;
  const [[coldF, hotF], [coldC, hotC]] = [plausible['°F'], plausible['°C']];
  return { min: { '°F': coldF, '°C': coldC }, max: { '°F': hotF, '°C': hotC } };
}

function sayRange({ min, max }: PlausibleRange, unit: TemperatureUnit): string {
  return `${decimalText(min[unit] ?? NaN, 2)} to ${decimalText(max[unit] ?? NaN, 2)} ${unit}`;
}
