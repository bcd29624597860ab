import { isColder, formatBoth } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import { DEGREES, type PrintedTemperature } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import type { RangeLimit } from './range-limit';

export const range: Kind<RangeLimit> = {
  takenAs: 'value',
  isOfCore: false,
  isChill: false,
  unitsRead: ({ measured }) => (measured === 'temperature' ? DEGREES : [measured === 'percent' ? '%' : measured]),
  say,
  fault,
  slips: none,
  temperatures,
  ruled: temperatures,
  rows: none,
};

function say({ min, max, measured, signs }: RangeLimit): string {
  const suffix = measured === 'percent' ? ' %' : '';
  const bounds = [
    ...(min === undefined ? [] : [`${signs?.min ?? '≥'} ${sayFigure(min)}${suffix}`]),
    ...(max === undefined ? [] : [`${signs?.max ?? '≤'} ${sayFigure(max)}${suffix}`]),
  ];
  const said = bounds.join(' and ') || 'no bound set';
  return measured === 'pH' || measured === 'aw' ? `${measured} ${said}` : said;
}

const sayFigure = (figure: PrintedTemperature | number): string =>
  typeof figure === 'number' ? decimalText(figure, 3) : formatBoth(figure);

function fault({ measured, min, max }: RangeLimit): string | undefined {
  const bounds = [min, max].filter((bound) => bound !== undefined);
  if (bounds.length === 0) return 'The range has neither a least nor a most.';
  const isTemperature = measured === 'temperature';
  if (bounds.some((bound) => (typeof bound === 'object') !== isTemperature)) {
    return isTemperature ? 'A range of temperatures needs its figures in °F or °C.' : 'Only a temperature has °F or °C.';
  }
  if (bounds.some((bound) => typeof bound === 'number' && !Number.isSafeInteger(bound)))
    return 'A figure of the range is no usable number.';
  if (typeof min === 'number' && typeof max === 'number' && min > max) return 'The least is more than the most.';
  if (typeof min === 'object' && typeof max === 'object' && isColder(max, min)) return 'The least is more than the most.';
  return undefined;
}

function temperatures({ min, max }: RangeLimit): PrintedTemperature[] {
  return [min, max].filter((bound) => typeof bound === 'object');
}
