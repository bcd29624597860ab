import { clockStart, recordsMoment, sayClockStart, startedBy, type ControlPoint, type Plan, type PlanContent } from '@larderbook/contracts';
import type { PlanControlPointData, PlanPaperData } from '@larderbook/documents';
import { isStirred, sayErrors, sayPiece, type Piece, type TemperatureUnit } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { formulaInUse } from '../products/formula-in-use';
import { planSummaries, showPlan, type PlanSummary } from '../products/plans.queries';
import { productsNow } from '../products/products-now';
import { headOf, numberIn } from './control-points-on-paper';
import { planLimitOnPaper } from './plan-limit-on-paper';
import { madeOf, productOnPaper } from './product-on-paper';
import { sheetOf } from './sheet-of';

/** One version of a plan, ready to print. Throws `not-found`. */
export async function gatherPlanPaper(tx: Tx, planId: string, by: Person, now: Date): Promise<PlanPaperData> {
  const plan = await showPlan(tx, planId, by.voice);
  const { content, productId, version } = plan;
  const unit: TemperatureUnit = by.establishment.units === 'US' ? '°F' : '°C';
  const product = (await productsNow(tx, [productId])).get(productId);
  const formula = await formulaInUse(tx, productId);
  return {
    sheet: await sheetOf(tx, by, now),
    title: content.title,
    product: plan.productName,
    version,
    ...standingOf(plan),
    description: productOnPaper(content, product),
    madeOf: formula && madeOf(formula),
    steps: stepsOf(plan),
    controlPoints: content.controlPoints.map((point) => pointOnPaper(point, plan, unit)),
    notes: content.notes || undefined,
    written: { by: plan.recordedBy, at: Date.parse(plan.recordedAt) },
    adopted: signedBy(plan, plan.statement ?? ''),
    supersedes: supersededBy(plan, await planSummaries(tx, productId)),
    cautions: [...plan.incomplete, ...plan.warnings],
  };
}

function standingOf({ adoptedAt, inForce }: Plan): Pick<PlanPaperData, 'stands' | 'because'> {
  if (!adoptedAt) return { stands: 'draft', because: 'Not adopted.' };
  return inForce
    ? { stands: 'in force', because: 'Lots are made by this version.' }
    : { stands: 'superseded', because: 'A later version is in force.' };
}

const stepsOf = ({ content }: Plan): PlanPaperData['steps'] =>
  content.steps.map(({ stepId, name, hazards }) => ({
    name,
    hazards,
    points: content.controlPoints
      .filter((point) => point.stepId === stepId)
      .map((point) => ({ number: numberIn(point, content), critical: point.kind === 'critical' })),
  }));

const pointOnPaper = (point: ControlPoint, { content }: Plan, unit: TemperatureUnit) => ({
  ...headOf(point, content),
  limits: point.limits.map(({ limit }) => planLimitOnPaper(limit, unit)),
  ...clockOf(point, content),
  liesIn: liesIn(point),
  piece: point.piece && pieceOnPaper(point.piece),
  allowedFor: sayAllowed(point),
  correctiveAction: point.correctiveAction,
  verification: point.verification || undefined,
});

/** What starts its clock, what it comes after, and of a recorded moment whose clock that starts. */
function clockOf(point: ControlPoint, { controlPoints }: PlanContent): Pick<PlanControlPointData, 'clockStarts' | 'follows' | 'starts'> {
  const before = controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  const started = recordsMoment(point) ? startedBy(point.controlPointId, controlPoints) : [];
  return {
    ...(point.takenAs === 'curve'
      ? { clockStarts: sayClockStart(clockStart(point, controlPoints)) || undefined }
      : { follows: before?.name }),
    starts: started.length > 0 ? started.map(({ name }) => name).join(', ') : undefined,
  };
}

function liesIn({ surroundings }: ControlPoint): string | undefined {
  if (!surroundings) return undefined;
  const { name, setPoint } = surroundings;
  const set = setPoint ? `, set to ${setPoint.value} ${setPoint.unit} by the shop’s own habit` : '';
  return `${name}${set}. Judged by no limit; it tells when the core will be there.`;
}

const sayAllowed = ({ errors }: ControlPoint): string | undefined => errors && `${sayErrors(errors).join('; ')}.`;

const signedBy = ({ adoptedAt, adoptedBy }: Pick<Plan, 'adoptedAt' | 'adoptedBy'>, statement: string) =>
  adoptedAt && adoptedBy ? { by: adoptedBy, at: Date.parse(adoptedAt), statement } : undefined;

/** The version that was in force until this one was adopted. */
function supersededBy({ adoptedAt }: Plan, all: readonly PlanSummary[]): PlanPaperData['supersedes'] {
  if (!adoptedAt) return undefined;
  const before = all.flatMap((one) =>
    one.adoptedAt && one.adoptedBy && one.adoptedAt < adoptedAt
      ? [{ version: one.version, adopted: { by: one.adoptedBy, at: Date.parse(one.adoptedAt) } }]
      : [],
  );
  return before.sort((a, b) => b.adopted.at - a.adopted.at)[0];
}

const pieceOnPaper = (piece: Piece): string =>
  `${sayPiece(piece)}. ${isStirred(piece) ? 'No reading is doubted for how fast it moves.' : 'A core that moves faster is doubted.'}`;
