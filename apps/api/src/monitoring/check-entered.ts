import { massUnits, type ControlPoint, type InputOf, type recordReading } from '@larderbook/contracts';
import {
  decimalText,
  degrees,
  hasAtMostDecimals,
  impossibleIn,
  isPlausible,
  isPossible,
  looksLikeOtherUnit,
  sayDegrees,
  scaledBig,
  unitsRead,
  type Degrees,
  type PlausibleRange,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { Problem } from '../platform/problem';

type Entered = InputOf<typeof recordReading>['entered'];
type Value = Extract<Entered, { value: number }>;

/**
 * Whether what was entered is of the kind the control point asks for. Throws `wrong-kind-of-value`, and `invalid-input`
 * for a temperature with more decimals than a thermometer shows.
 */
export function checkKind(point: ControlPoint, entered: Entered): void {
  if (point.takenAs === 'weighings') throw wrongKind(`${point.name} is judged from what is weighed into the lot.`);
  if ('answer' in entered) {
    if (point.takenAs === 'attestation') return;
    throw wrongKind(`${point.name} asks for ${askedAt(point)}, not for yes or no.`);
  }
  if (point.takenAs === 'attestation') throw wrongKind(`${point.name} asks for yes or no, and what was seen.`);
  const units = unitsRead(point.limits.map(({ limit }) => limit));
  if (!units.includes(entered.unit)) throw wrongKind(`${point.name} asks for ${askedAt(point)}, not for ${entered.unit}.`);
  if (isTemperature(entered) && !hasAtMostDecimals(entered.value, 2)) {
    const detail = 'A temperature has at most two decimals.';
    throw new Problem('invalid-input', { detail, errors: [{ pointer: '#/entered/value', detail }] });
  }
}

/** The question to ask about a value nobody would expect here; undefined when there is nothing to ask. */
export function askAbout(point: ControlPoint, entered: Entered): string | undefined {
  if ('answer' in entered) return undefined;
  if (isTemperature(entered)) return askAboutDegrees(degrees(entered.value, entered.unit), rangeOf(point));
  const { value, unit } = entered;
  const least = (massUnits as readonly string[]).includes(unit) ? 0.001 : 0;
  const impossible = impossibleIn(unit, scaledBig(value, 3) ?? 0n);
  if (impossible) return `${impossible} Is it really so?`;
  return value >= least ? undefined : `${value} ${unit} cannot be. Check the instrument. Is it really so?`;
}

function askAboutDegrees(entered: Degrees, range: PlausibleRange | undefined): string | undefined {
  if (range ? isPlausible(entered, range) : isPossible(entered)) return undefined;
  const other: Degrees = { ...entered, unit: entered.unit === '°C' ? '°F' : '°C' };
  const expected = range ? `here ${sayRange(range, entered.unit)} would be expected` : 'no food is that hot or cold';
  const isOther = range !== undefined && looksLikeOtherUnit(entered, range);
  const question = isOther ? `Did you mean ${sayDegrees(other)}?` : 'Is it really so?';
  return `${sayDegrees(entered)} was entered; ${expected}. ${question}`;
}

const isTemperature = (entered: Value): entered is Value & { unit: TemperatureUnit } => entered.unit === '°C' || entered.unit === '°F';

const wrongKind = (detail: string) => new Problem('wrong-kind-of-value', { detail });

/** "temperature in °F or °C", "kg, g, lb or oz" */
function askedAt({ limits }: ControlPoint): string {
  const units = unitsRead(limits.map(({ limit }) => limit));
  const said = units.length > 1 ? `${units.slice(0, -1).join(', ')} or ${units.at(-1)}` : (units[0] ?? 'nothing');
  return units.every((unit) => unit === '°F' || unit === '°C') ? `temperature in ${said}` : said;
}

function rangeOf({ plausible }: ControlPoint): PlausibleRange | undefined {
  if (!plausible) return undefined;
  const [[coldF, hotF], [coldC, hotC]] = [plausible['°F'], plausible['°C']];
  return { min: { '°F': coldF, '°C': coldC }, max: { '°F': hotF, '°C': hotC } };
}

function sayRange({ min, max }: PlausibleRange, unit: TemperatureUnit): string {
  return `${decimalText(min[unit] ?? NaN, 2)} to ${decimalText(max[unit] ?? NaN, 2)} ${unit}`;
}
