import { z } from 'zod';
import { curveFinding } from './curve-findings';
import { madeBy } from './fields';
import { pointForecast } from './forecasts';
import { judged } from './limits';
import { linePart } from './line-part';
import { reading } from './lot-entries';
import { controlPoint } from './plan';

export const controlPointOnLot = z.object({
  controlPoint,
  stands: z.enum(['not-started', 'running', 'met', 'missed', 'undetermined']),
  /** Met, or closed deviations cover every miss. */
  settled: z.boolean(),
  judged: z.array(judged),
  /** A curve is judged as a whole: its readings carry no verdict. */
  readings: z.array(reading),
  endedAt: z.string().optional(),
  /** The operator says that the stage is finished. */
  stageEnd: z.object({ stageEndId: z.string(), rowId: z.string(), made: madeBy }).optional(),
  /** One band per stage. */
  bands: z.array(
    z.object({
      limitId: z.string(),
      label: linePart,
      startAt: z.number(),
      endAt: z.number().optional(),
      deadline: z.number().optional(),
      kind: z.enum(['met', 'missed', 'undetermined', 'running']),
    }),
  ),
  openDeviationId: z.string().optional(),
  /** The curve cannot be met until a person says what these were. Only when one lot is shown. */
  doubts: z.array(curveFinding).optional(),
  /** Only while a stage runs. */
  forecast: pointForecast.optional(),
});
export type ControlPointOnLot = z.output<typeof controlPointOnLot>;
