import { above, boundOf, sayPrinted } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import type { PrintedTemperature } from '../../quantity/temperature';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { boundsAllowing, errorFor, judgeRange } from './judge-range';
import type { RangeLimit } from './range-limit';
import { isDegrees, type Measurement } from '../../limits/measurement';
import type { Tell, Told } from '../../limits/told';
import { worstVerdict } from '../../limits/worst-verdict';
import type { WorkedStep as Step } from '../../explain/explanation';
import type { WorkedOut } from '../../explain/explanation';

/** One value as it was read. `at` in epoch ms. */
export type ValueRead = { id?: string; at?: number; probe?: string; measurement: Measurement | undefined };

/** Every value against the bounds; the one that governs with its numbers put in. */
export function explainRange(printed: RangeLimit, values: readonly ValueRead[], tell: Tell, errors?: InstrumentErrors): WorkedOut {
  const judged = values.map((value) => ({ ...value, verdict: judgeRange(value.measurement, printed, errors) }));
  const error = errorFor(printed, errors);
  const limit = error ? { ...printed, ...boundsAllowing(printed, error) } : printed;
  if (judged.length === 0) return { steps: [], restsOn: [], assumptions: [] };
  const worst = worstVerdict(judged.map(({ verdict }) => verdict));
  const governing = judged.find(({ verdict }) => verdict === worst);
  const told = tell(worst, printed);
  return {
    steps: governing?.measurement ? stepsOf(governing.measurement, limit, told) : [],
    restsOn: judged.map(({ id, at, probe, verdict }) => {
      const { kind, measured, margin } = tell(verdict, printed);
      const role = verdict === worst ? 'governs' : [kind, margin].filter(Boolean).join(', ');
      return { id, at, probe: probe || undefined, said: measured, role };
    }),
    assumptions: [
      ...(judged.length > 1 ? ['Each value is judged by itself; a later good one undoes no earlier miss.'] : []),
      ...told.notes,
    ],
  };
}

function stepsOf(measurement: Measurement, { min, max, signs }: RangeLimit, { because }: Told): Step[] {
  const step = (side: 'least' | 'most', figure: PrintedTemperature | number, sign: string): Step[] => {
    const compared = compare(measurement, figure);
    if (!compared) return [];
    const { value, bound } = compared;
    const isLeast = side === 'least';
    return [
      {
        what: isLeast ? `Above the least, ${sign} ${bound}` : `Below the most, ${sign} ${bound}`,
        rule: isLeast ? 'value − least, not below 0' : 'most − value, not below 0',
        putIn: isLeast ? `${value} − ${bound}` : `${bound} − ${value}`,
        gives: `${isLeast ? compared.above.plain : compared.above.turned}. ${because}`,
      },
    ];
  };
  return [
    ...(min === undefined ? [] : step('least', min, signs?.min ?? '≥')),
    ...(max === undefined ? [] : step('most', max, signs?.max ?? '≤')),
  ];
}

type Compared = { value: string; bound: string; above: { plain: string; turned: string } };

/** How far a value lies above a figure, and below it; two decimals where a figure has to be converted for reading. */
function compare(measurement: Measurement, figure: PrintedTemperature | number): Compared | undefined {
  const both = (count: number, decimals: number, unit = '') => ({
    plain: decimalText(count, decimals) + unit,
    turned: decimalText(-count, decimals) + unit,
  });
  if (isDegrees(measurement)) {
    if (typeof figure === 'number') return undefined;
    const { unit } = measurement;
    const by = Math.round(above(measurement, boundOf(figure)) / (unit === '°C' ? 9 : 5));
    return { value: sayDegrees(measurement), bound: sayPrinted(figure, unit), above: both(by, 2, ` ${unit}`) };
  }
  if (typeof figure !== 'number') return undefined;
  const { thousandths } = measurement;
  return { value: decimalText(thousandths, 3), bound: decimalText(figure, 3), above: both(thousandths - figure, 3) };
}
