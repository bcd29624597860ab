import { onCommonScale } from '../quantity/convert-degrees';
import type { PrintedTemperature } from '../quantity/temperature';
import type { CodedAs } from '../limits/coded';
import { amountOf } from '../quantity/quantities';
import { kindOf } from '../kinds/registry';
import type { LimitRow } from './limit-set';

type PairFault = CodedAs<'pair-disagrees' | 'pair-not-odd'>;

/** °F and °C must be one temperature within the rounding of the °C. A pair named as odd that is not is a slip too. */
export function faultsOfPairs(row: LimitRow): PairFault[] {
  const figures = kindOf(row.limit).temperatures(row.limit);
  const half = halfStepOf(figures);
  const odd = row.printedOdd ?? [];
  const isNamed = (figure: PrintedTemperature) => odd.some((known) => known['°F'] === figure['°F'] && known['°C'] === figure['°C']);
  const isOff = (figure: PrintedTemperature) => gapBetweenUnits(figure) > half;
  return [
    ...figures.filter((figure) => isOff(figure) && !isNamed(figure)).map(said('pair-disagrees')),
    ...odd.filter((figure) => !isOff(figure)).map(said('pair-not-odd')),
  ];
}

/** In ninths of a hundredth: half a degree, or half a tenth where any °C of the row has a decimal. */
function halfStepOf(figures: readonly PrintedTemperature[]): number {
  const inTenths = figures.some(({ '°C': celsius }) => celsius !== undefined && celsius % 100 !== 0);
  return inTenths ? 45 : 450;
}

function gapBetweenUnits({ '°F': fahrenheit, '°C': celsius }: PrintedTemperature): number {
  if (fahrenheit === undefined || celsius === undefined) return 0;
  const [one, other] = [fahrenheit, celsius];
  return Math.abs(onCommonScale({ hundredths: one, unit: '°F' }) - onCommonScale({ hundredths: other, unit: '°C' }));
}

const said =
  (code: PairFault['code']) =>
  ({ '°F': fahrenheit = NaN, '°C': celsius = NaN }: PrintedTemperature): PairFault => ({
    code,
    figures: { fahrenheit: amountOf(fahrenheit, '°F', 2), celsius: amountOf(celsius, '°C', 2) },
  });
