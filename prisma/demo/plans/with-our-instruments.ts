import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { isOfKind, type InstrumentErrors } from '@larderbook/haccp';

const probe: InstrumentErrors = { temperature: { hundredths: 100, unit: '°F' } };
const logger: InstrumentErrors = { temperature: { hundredths: 50, unit: '°F' } };
const benchScale: InstrumentErrors['mass'] = { thousandths: 200, unit: 'g', step: 100 };
const floorScale: InstrumentErrors['meat'] = { thousandths: 50, unit: 'lb' };

/** What the shop’s own instruments may be wrong by, at every control point that is read with them. */
export const withOurInstruments = (plan: PlanContent): PlanContent => ({
  ...plan,
  controlPoints: plan.controlPoints.map((point) => {
    const errors = errorsAt(point);
    return errors ? { ...point, errors } : point;
  }),
});

function errorsAt({ takenAs, limits }: ControlPoint): InstrumentErrors | undefined {
  const kinds = limits.map(({ limit }) => limit.kind);
  if (takenAs === 'weighings') return { mass: benchScale, meat: floorScale };
  if (kinds.includes('degreeHours')) return { ...logger, pH: { thousandths: 30 } };
  if (kinds.includes('freezing')) return logger;
  if (kinds.includes('weightLoss')) return { mass: benchScale };
  if (limits.some(({ limit }) => isOfKind(limit, 'range') && limit.measured === 'aw')) return { aw: { thousandths: 3 } };
  if (takenAs === 'curve' || (takenAs === 'value' && kinds.includes('range'))) return probe;
  return undefined;
}
