import { above, boundOf, sayPrinted } from '../quantity/bound';
import { decimalText } from '../quantity/decimal';
import { sayDegrees } from '../quantity/degrees';
import type { PrintedTemperature } from '../quantity/temperature';
import { judgeRange } from '../limits/judge-range';
import type { RangeLimit } from '../limits/limit';
import { isDegrees, type Measurement } from '../limits/measurement';
import type { Verdict } from '../limits/verdict';
import { worstVerdict } from '../limits/worst-verdict';
import type { Step } from '../workings/working';
import type { WorkedOut } from './explanation';

/** One value as it was read. `at` in epoch ms. */
export type ValueRead = { id?: string; at?: number; probe?: string; measurement: Measurement | undefined };

/** Every value against the bounds; the one that governs with its numbers put in. */
export function explainRange(limit: RangeLimit, values: readonly ValueRead[]): WorkedOut {
  const judged = values.map((value) => ({ ...value, verdict: judgeRange(value.measurement, limit) }));
  if (judged.length === 0) return { steps: [], restsOn: [], assumptions: [] };
  const worst = worstVerdict(judged.map(({ verdict }) => verdict));
  const governing = judged.find(({ verdict }) => verdict === worst);
  return {
    steps: governing?.measurement ? stepsOf(governing.measurement, limit, worst) : [],
    restsOn: judged.map(({ id, at, probe, verdict }) => ({
      id,
      at,
      probe: probe || undefined,
      said: verdict.measured,
      role: verdict === worst ? 'governs' : [verdict.kind, verdict.margin].filter(Boolean).join(', '),
    })),
    assumptions: judged.length > 1 ? ['Each value is judged by itself; a later good one undoes no earlier miss.'] : [],
  };
}

type Side = 'least' | 'most';

function stepsOf(measurement: Measurement, { min, max, signs }: RangeLimit, { because }: Verdict): Step[] {
  const step = (side: Side, figure: PrintedTemperature | number, sign: string): Step[] => {
    const inside = distance(measurement, figure, side);
    if (inside === undefined) return [];
    const [value, bound] = [sayValue(measurement), sayBound(measurement, figure)];
    const isLeast = side === 'least';
    return [
      {
        what: isLeast ? `Above the least, ${sign} ${bound}` : `Below the most, ${sign} ${bound}`,
        rule: isLeast ? 'value − least, not below 0' : 'most − value, not below 0',
        putIn: isLeast ? `${value} − ${bound}` : `${bound} − ${value}`,
        gives: `${inside}. ${because}`,
      },
    ];
  };
  return [
    ...(min === undefined ? [] : step('least', min, signs?.min ?? '≥')),
    ...(max === undefined ? [] : step('most', max, signs?.max ?? '≤')),
  ];
}

/** In the unit read, to two decimals where a figure printed in the other unit has to be converted. */
function distance(measurement: Measurement, figure: PrintedTemperature | number, side: Side): string | undefined {
  const sign = side === 'least' ? 1 : -1;
  if (isDegrees(measurement) !== (typeof figure === 'object')) return undefined;
  if (typeof figure === 'number') return decimalText(sign * (thousandths(measurement) - figure), 3);
  if (!isDegrees(measurement)) return undefined;
  const perHundredth = measurement.unit === '°C' ? 9 : 5;
  const by = (sign * above(measurement, boundOf(figure))) / perHundredth;
  return `${decimalText(Math.round(by), 2)} ${measurement.unit}`;
}

const thousandths = (measurement: Measurement): number => (isDegrees(measurement) ? NaN : measurement.thousandths);

const sayValue = (measurement: Measurement): string =>
  isDegrees(measurement) ? sayDegrees(measurement) : decimalText(measurement.thousandths, 3);

const sayBound = (measurement: Measurement, figure: PrintedTemperature | number): string =>
  typeof figure === 'number' ? decimalText(figure, 3) : isDegrees(measurement) ? sayPrinted(figure, measurement.unit) : '';
