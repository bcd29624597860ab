import { above, boundOf } from '../../quantity/bound';
import { STEPS } from '../../quantity/convert-degrees';
import { decimalText } from '../../quantity/decimal';
import { degreesOf, printedIn } from '../../quantity/quantities';
import type { Quantity, QuantityUnit } from '../../quantity/quantity';
import type { PrintedTemperature } from '../../quantity/temperature';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { boundsAllowing, errorFor, judgeRange } from './judge-range';
import type { RangeLimit } from './range-limit';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import { isDegrees, type Measurement } from '../../limits/measurement';
import type { Verdict } from '../../limits/verdict';
import { worstVerdict } from '../../limits/worst-verdict';
import type { ExplainedStep, WorkedOut } from '../../explain/explanation';

/** `at` in epoch ms. */
export type ValueRead = { id?: string; at?: number; probe?: string; measurement: Measurement | undefined };

export function explainRange(printed: RangeLimit, values: readonly ValueRead[], errors?: InstrumentErrors): WorkedOut {
  const judged = values.map((value) => ({ ...value, of: judgeRange(value.measurement, printed, errors) }));
  const error = errorFor(printed, errors);
  const limit = error ? { ...printed, ...boundsAllowing(printed, error) } : printed;
  if (judged.length === 0) return { steps: [], restsOn: [], assumptions: [] };
  const worst = worstVerdict(judged.map(({ of }) => of));
  const governing = judged.find(({ of }) => of === worst);
  return {
    steps: governing?.measurement ? stepsOf(governing.measurement, limit, worst) : [],
    restsOn: judged.map(({ id, at, probe, of }) => ({
      id,
      at,
      probe: probe || undefined,
      is: { verdict: 'measured' },
      role: of === worst ? coded('governs') : { verdict: 'kind and margin' },
      of,
    })),
    assumptions: [...(judged.length > 1 ? [coded('each-value-by-itself')] : []), ...worst.notes],
  };
}

function stepsOf(measurement: Measurement, { min, max, signs }: RangeLimit, of: Verdict): ExplainedStep[] {
  const step = (side: 'least' | 'most', figure: PrintedTemperature | number, sign: string): ExplainedStep[] => {
    const compared = compare(measurement, figure);
    if (!compared) return [];
    const { value, bound, by } = compared;
    const isLeast = side === 'least';
    return [
      {
        what: coded(isLeast ? 'above-the-least' : 'below-the-most', { sign, bound }),
        rule: coded(isLeast ? 'value-less-least' : 'most-less-value'),
        putIn: isLeast ? sum`${value} − ${bound}` : sum`${bound} − ${value}`,
        gives: sum`${isLeast ? by.above : by.below}. ${{ verdict: 'because' }}`,
        of,
      },
    ];
  };
  return [
    ...(min === undefined ? [] : step('least', min, signs?.min ?? '≥')),
    ...(max === undefined ? [] : step('most', max, signs?.max ?? '≤')),
  ];
}

type Compared = { value: Quantity; bound: Quantity; by: { above: Quantity; below: Quantity } };

/** Two decimals where a figure is converted for reading. */
function compare(measurement: Measurement, figure: PrintedTemperature | number): Compared | undefined {
  const both = (count: number, decimals: number, unit: QuantityUnit) => ({
    above: { value: decimalText(count, decimals), unit },
    below: { value: decimalText(-count, decimals), unit },
  });
  if (isDegrees(measurement)) {
    if (typeof figure === 'number') return undefined;
    const { unit } = measurement;
    const by = Math.round(above(measurement, boundOf(figure)) / STEPS[unit]);
    return { value: degreesOf(measurement), bound: printedIn(figure, unit), by: both(by, 2, unit) };
  }
  if (typeof figure !== 'number') return undefined;
  const { thousandths } = measurement;
  const plain = (count: number): Quantity => ({ value: decimalText(count, 3), unit: 'ratio' });
  return { value: plain(thousandths), bound: plain(figure), by: both(thousandths - figure, 3, 'ratio') };
}
