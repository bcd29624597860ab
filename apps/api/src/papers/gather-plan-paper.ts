import { clockStart, recordsMoment, startedBy, type ControlPoint, type Plan, type PlanContent } from '@larderbook/contracts';
import type { PlanControlPointData, PlanPaperData } from '@larderbook/documents';
import { isStirred, type Piece, type TemperatureUnit } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { formulaInUse } from '../products/formula-in-use';
import { planSummaries, showPlan, type PlanSummary } from '../products/plans.queries';
import { productsNow } from '../products/products-now';
import { headOf, numberIn } from './control-points-on-paper';
import { planLimitOnPaper } from './plan-limit-on-paper';
import { madeOf, productOnPaper } from './product-on-paper';
import { sheetOf } from './sheet-of';
import { tellingIn, type Telling } from './telling';

/** Throws `not-found`. */
export async function gatherPlanPaper(tx: Tx, planId: string, by: Person, now: Date): Promise<PlanPaperData> {
  const plan = await showPlan(tx, planId, by.voice);
  const { content, productId, version } = plan;
  const telling = tellingIn(by.voice);
  const { say } = telling;
  const unit: TemperatureUnit = by.establishment.units === 'US' ? '°F' : '°C';
  const product = (await productsNow(tx, [productId])).get(productId);
  const formula = await formulaInUse(tx, productId);
  return {
    sheet: await sheetOf(tx, by, now),
    title: content.title,
    product: plan.productName,
    version,
    ...standingOf(plan, say),
    description: productOnPaper(content, product, telling),
    madeOf: formula && madeOf(formula, say),
    steps: stepsOf(plan, telling),
    controlPoints: content.controlPoints.map((point) => pointOnPaper(point, plan, unit, telling)),
    notes: content.notes || undefined,
    written: { by: plan.recordedBy, at: Date.parse(plan.recordedAt) },
    adopted: signedBy(plan, plan.statement ?? ''),
    supersedes: supersededBy(plan, await planSummaries(tx, productId)),
    cautions: [...plan.incomplete, ...plan.warnings],
  };
}

function standingOf({ adoptedAt, inForce }: Plan, say: Telling['say']): Pick<PlanPaperData, 'stands' | 'because'> {
  if (!adoptedAt) return { stands: say('draft'), because: say('draft-because') };
  return inForce
    ? { stands: say('in-force'), because: say('in-force-because') }
    : { stands: say('superseded'), because: say('superseded-because') };
}

const stepsOf = ({ content }: Plan, { say, of }: Telling): PlanPaperData['steps'] =>
  content.steps.map(({ stepId, name, hazards }) => ({
    name,
    hazards: hazards.map((hazard) => ({ ...hazard, kind: of('plans')(codeOf('hazard', hazard.kind)) })),
    points: content.controlPoints
      .filter((point) => point.stepId === stepId)
      .map((point) => ({ number: numberIn(point, content, say), critical: point.kind === 'critical' })),
  }));

const pointOnPaper = (point: ControlPoint, { content }: Plan, unit: TemperatureUnit, telling: Telling) => ({
  ...headOf(point, content, telling),
  limits: point.limits.map(({ limit }) => planLimitOnPaper(limit, unit, telling)),
  ...clockOf(point, content, telling.limits),
  liesIn: liesIn(point, telling.say),
  piece: point.piece && pieceOnPaper(point.piece, telling),
  allowedFor: sayAllowed(point, telling.limits),
  correctiveAction: point.correctiveAction,
  verification: point.verification || undefined,
});

function clockOf(
  point: ControlPoint,
  { controlPoints }: PlanContent,
  { sayClockStart }: Telling['limits'],
): Pick<PlanControlPointData, 'clockStarts' | 'follows' | 'starts'> {
  const before = controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  const started = recordsMoment(point) ? startedBy(point.controlPointId, controlPoints) : [];
  return {
    ...(point.takenAs === 'curve'
      ? { clockStarts: sayClockStart(clockStart(point, controlPoints)) || undefined }
      : { follows: before?.name }),
    starts: started.length > 0 ? started.map(({ name }) => name).join(', ') : undefined,
  };
}

function liesIn({ surroundings }: ControlPoint, say: Telling['say']): string | undefined {
  if (!surroundings) return undefined;
  const { name, setPoint } = surroundings;
  return setPoint ? say('lies-in-set', { name, setPoint: `${setPoint.value} ${setPoint.unit}` }) : say('lies-in-what', { name });
}

const sayAllowed = ({ errors }: ControlPoint, { sayErrors }: Telling['limits']): string | undefined =>
  errors && `${sayErrors(errors).join('; ')}.`;

const signedBy = ({ adoptedAt, adoptedBy }: Pick<Plan, 'adoptedAt' | 'adoptedBy'>, statement: string) =>
  adoptedAt && adoptedBy ? { by: adoptedBy, at: Date.parse(adoptedAt), statement } : undefined;

function supersededBy({ adoptedAt }: Plan, all: readonly PlanSummary[]): PlanPaperData['supersedes'] {
  if (!adoptedAt) return undefined;
  const before = all.flatMap((one) =>
    one.adoptedAt && one.adoptedBy && one.adoptedAt < adoptedAt
      ? [{ version: one.version, adopted: { by: one.adoptedBy, at: Date.parse(one.adoptedAt) } }]
      : [],
  );
  return before.sort((a, b) => b.adopted.at - a.adopted.at)[0];
}

const pieceOnPaper = (piece: Piece, { say, limits }: Telling): string =>
  `${limits.sayPiece(piece)}. ${say(isStirred(piece) ? 'never-doubted' : 'doubted-faster')}`;
