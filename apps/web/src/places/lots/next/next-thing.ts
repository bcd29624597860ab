import { clockStart, ofProduct, type ControlPointOnLot, type Lot } from '@larderbook/contracts';

type Target = Lot['targets'][number];

/** Only what a person does is next; what is due is on the sheet. */
export type NextThing =
  | { do: 'put in meat'; target?: Target }
  | { do: 'weigh'; target: Target }
  | { do: 'record'; point: ControlPointOnLot }
  | { do: 'finish'; point: ControlPointOnLot }
  | { do: 'settle'; deviationId: string; number: number }
  | { do: 'pack' }
  | { do: 'review' }
  | { do: 'ship' }
  | { do: 'nothing' };

/**
 * A running stage comes first, and before it the moment it asks for; then an open deviation, then the work in its
 * order. Nothing here allows or forbids: anything else may be recorded too.
 */
export function nextThing(lot: Lot): NextThing {
  if (lot.standing === 'ended' || lot.standing === 'shipped' || lot.standing === 'condemned') return { do: 'nothing' };
  const running = mostUrgent(lot.controlPoints.filter(isWaitedFor));
  if (running) {
    const start = startToRecord(running, lot);
    if (start) return { do: 'record', point: start };
    return isReadyToFinish(running) ? { do: 'finish', point: running } : { do: 'record', point: running };
  }

  const open = lot.deviations.find((deviation) => deviation.open);
  if (open) return { do: 'settle', deviationId: open.deviationId, number: open.number };

  if (lot.standing === 'in-work') return nextWork(lot);
  if (lot.standing === 'to-review') return { do: 'review' };
  return { do: lot.standing === 'cleared' ? 'ship' : 'nothing' };
}

function nextWork(lot: Lot): NextThing {
  const meat = lot.targets.find((target) => target.part === 'meat' && target.weighedGrams === 0);
  if (lot.meatBlockGrams === 0 || meat) return { do: 'put in meat', target: meat };
  const target = lot.targets.find(isStillToWeigh);
  if (target) return { do: 'weigh', target };
  // Weighings are recorded under their ingredient: one that is open here has no ingredient and comes last.
  const open = lot.controlPoints.filter(isStillToRecord);
  const point = open.find(({ controlPoint }) => controlPoint.takenAs !== 'weighings') ?? open[0];
  if (point) return { do: 'record', point };
  return lot.packages === 0 ? { do: 'pack' } : { do: 'review' };
}

export const isStillToWeigh = ({ part, weighedGrams, minGrams }: Target): boolean =>
  part === 'ingredient' && (weighedGrams === 0 || weighedGrams < (minGrams ?? 0));

export const isRunning = ({ controlPoint, readings, endedAt }: ControlPointOnLot): boolean =>
  controlPoint.takenAs === 'curve' && endedAt === undefined && ofProduct(controlPoint, readings).length > 0;

/** The control point that records when a running stage, or its chilling, began. */
function startToRecord({ controlPoint }: ControlPointOnLot, { controlPoints }: Lot): ControlPointOnLot | undefined {
  const { answer } = clockStart(
    controlPoint,
    controlPoints.map((point) => point.controlPoint),
  );
  return controlPoints.find((point) => point.controlPoint === answer && point.stands === 'not-started');
}

/** A missed stage is not waited for, unless another of its bounds can still be reached in time. */
const isWaitedFor = (point: ControlPointOnLot): boolean =>
  isRunning(point) && (point.stands !== 'missed' || firstDeadline(point) !== undefined);

/** Every limit is met: only the word that the stage is over is missing. */
const isReadyToFinish = (point: ControlPointOnLot): boolean =>
  isRunning(point) && point.judged.length > 0 && point.judged.every(({ verdict }) => verdict.kind === 'met');

const isStillToRecord = ({ stands, settled }: ControlPointOnLot): boolean =>
  !settled && (stands === 'not-started' || stands === 'undetermined');

/** Epoch ms; undefined when no running bound has a time. */
export function firstDeadline({ judged }: ControlPointOnLot): number | undefined {
  const deadlines = judged.flatMap(({ verdict }) => verdict.running?.deadline ?? []);
  return deadlines.length > 0 ? Math.min(...deadlines) : undefined;
}

const mostUrgent = (points: ControlPointOnLot[]): ControlPointOnLot | undefined =>
  [...points].sort((a, b) => (firstDeadline(a) ?? Infinity) - (firstDeadline(b) ?? Infinity))[0];
